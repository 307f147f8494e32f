"""Français des matériaux de conduite : noms, et d'où vient la part de leur classe qu'ils gardent en eau chaude."""

SENTENCES: dict[str, str] = {
    "material.pe100": "PE100",
    "material.pvc_u": "PVC-U",
    "material.steel": "acier",
    "material.plastic": "plastique",
    "material.standard.pe100": "ISO 4427-2",
    "material.standard.steel": "EN 10255",
    "material.warm.pe": "ISO 4427-1 annexe A (de mémoire)",
    "material.warm.pvc_u": "ISO 1452-2 annexe A (de mémoire)",
    "material.warm.steel": "l'acier garde sa classe jusqu'à 120 °C, EN 10242 (de mémoire)",
}
