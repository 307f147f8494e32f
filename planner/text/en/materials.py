"""English of the pipe materials: names, and where the share of the class that they keep in warm water comes from."""

SENTENCES: dict[str, str] = {
    "material.pe100": "PE100",
    "material.pvc_u": "PVC-U",
    "material.steel": "steel",
    "material.plastic": "plastic",
    "material.standard.pe100": "ISO 4427-2",
    "material.standard.steel": "EN 10255",
    "material.warm.pe": "ISO 4427-1 annex A (from memory)",
    "material.warm.pvc_u": "ISO 1452-2 annex A (from memory)",
    "material.warm.steel": "steel keeps its class to 120 deg C, EN 10242 (from memory)",
}
