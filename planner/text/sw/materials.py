"""Kiswahili cha vitu vya mabomba: majina, na chanzo cha daraja lake kwa maji ya joto."""

SENTENCES: dict[str, str] = {
    "material.pe100": "PE100",
    "material.pvc_u": "PVC-U",
    "material.steel": "chuma",
    "material.plastic": "plastiki",
    "material.standard.pe100": "ISO 4427-2",
    "material.standard.steel": "EN 10255",
    "material.warm.pe": "ISO 4427-1 kiambatisho A (kwa kumbukumbu)",
    "material.warm.pvc_u": "ISO 1452-2 kiambatisho A (kwa kumbukumbu)",
    "material.warm.steel": "chuma hudumisha daraja lake hadi 120 °C, EN 10242 (kwa kumbukumbu)",
}
