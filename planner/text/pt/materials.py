"""Português dos materiais da conduta: nomes, e de onde vem a parte da classe que mantêm em água quente."""

SENTENCES: dict[str, str] = {
    "material.pe100": "PE100",
    "material.pvc_u": "PVC-U",
    "material.steel": "aço",
    "material.plastic": "plástico",
    "material.standard.pe100": "ISO 4427-2",
    "material.standard.steel": "EN 10255",
    "material.warm.pe": "ISO 4427-1 anexo A (de memória)",
    "material.warm.pvc_u": "ISO 1452-2 anexo A (de memória)",
    "material.warm.steel": "o aço mantém a sua classe até 120 °C, EN 10242 (de memória)",
}
