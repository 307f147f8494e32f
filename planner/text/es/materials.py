"""Español de los materiales de tubería: nombres, y de dónde es la parte de la clase que conservan en agua caliente."""

SENTENCES: dict[str, str] = {
    "material.pe100": "PE100",
    "material.pvc_u": "PVC-U",
    "material.steel": "acero",
    "material.plastic": "plástico",
    "material.standard.pe100": "ISO 4427-2",
    "material.standard.steel": "EN 10255",
    "material.warm.pe": "ISO 4427-1 anexo A (de memoria)",
    "material.warm.pvc_u": "ISO 1452-2 anexo A (de memoria)",
    "material.warm.steel": "el acero conserva su clase hasta 120 °C, EN 10242 (de memoria)",
}
