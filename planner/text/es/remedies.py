"""Español de los remedios aplicados: el archivo en que se escriben, y lo que cuestan y consiguen."""

SENTENCES: dict[str, str] = {
    # the file
    "apply.note": "remedio: {what}",
    "apply.note_was": "remedio: {what}, antes {before}",
    "apply.note_path": "desde la carpeta de este archivo",
    "apply.heading": "Remedios aplicados",
    "apply.none": "Ninguna comprobación deja de cumplirse: no hay nada que aplicar.",
    "apply.none_computed": "Ninguno de los remedios se puede calcular.",
    "apply.one": "Para {topic}, {what}: {remedy}",
    "apply.left": "Queda por hacer, porque no se puede calcular, para {topic}, {what}: {remedy}",
    "apply.comments_lost": "No se pudieron conservar los comentarios ni el orden del archivo.",
    "apply.nothing_installed": (
        "El archivo dice lo que hay que construir o comprar; lo que un remedio no abarca, y cada una de sus cifras, "
        "debe confirmarlo un profesional autorizado."
    ),
    "apply.wrote_clean": "Se escribió {file}: ninguna comprobación deja de cumplirse.",
    "apply.wrote_one_fails": "Se escribió {file}: una comprobación sigue sin cumplirse.",
    "apply.wrote_fail": "Se escribió {file}: {count} comprobaciones siguen sin cumplirse.",
    # what is changed, in a few words inside a sentence
    "remedy_item.cables_dc_section_mm2": "cable del campo fotovoltaico de {value:g} mm2",
    "remedy_item.cables_ac_section_mm2": "cable de CA de {value:g} mm2",
    "remedy_item.cables_drop_section_mm2": "cable de bajada de {value:g} mm2",
    "remedy_item.cables_ac_protective_device_a": "dispositivo de protección de {value:g} A para el cable de CA",
    "remedy_item.cables_drop_protective_device_a": "dispositivo de protección de {value:g} A para el cable de bajada",
    "remedy_item.cables_dc_voltage_class_v": "cable del campo fotovoltaico hecho para {value:g} V CC",
    "remedy_item.cables_dc_outdoor": "cable del campo fotovoltaico hecho para sol e intemperie",
    "remedy_item.cables_drop_length_m": "cable de bajada de {value:g} m",
    "remedy_item.sources_grid_power_limit_w": "conexión a la red eléctrica para {value:g} W",
    "remedy_item.sources_generator_rating_kw": "grupo electrógeno de {value:g} kW",
    "remedy_item.sources_solar_modules_in_series": "{value:g módulo|módulos} en serie",
    "remedy_item.sources_solar_strings": "{value:g cadena|cadenas}",
    "remedy_item.sources_solar_strings_max": "como máximo {value:g cadena|cadenas}",
    "remedy_item.sources_solar_string_fuse_a": "fusibles de cadena de {value:g} A",
    "remedy_item.controller_power_limit_w": "controlador para {value:g} W",
    "remedy_item.pipeline_segments_pipe": "tubería {value}",
    "remedy_item.pipeline_riser_pipe": "tubería de columna {value}",
    "remedy_item.pipeline_pipe": "tubería de impulsión de {value}",
    "remedy_item.pipeline_stop_time_s": "parada de la bomba en {value:g} s",
    "remedy_item.pipeline_profile_air_valve": "ventosas en los puntos altos",
    "remedy_item.borehole_pump_depth_m": "bomba a {value:g} m",
    "remedy_item.borehole_flow_sleeve_diameter_mm": "camisa de refrigeración de {value:g} mm",
    "remedy_item.tank_volume_m3": "tanque de {value:g} m3",
    "remedy_item.tank_outlet_height_m": "salida del tanque a {value:g} m",
    # what they come to
    "remedied.answer": "Con los remedios ({remedies}), {option} cubre el {met:.1f} % del agua, y {checks}.",
    "remedied.answer_priced": (
        "Con los remedios ({remedies}), {option} cuesta {cost}, cubre el {met:.1f} % del agua, y {checks}."
    ),
    "remedied.more": "{gap} más en el período de análisis",
    "remedied.more_than": "{gap} más en el período de análisis que {before} sin ellos",
    "remedied.less": "{gap} menos en el período de análisis",
    "remedied.less_than": "{gap} menos en el período de análisis que {before} sin ellos",
    "remedied.same": "lo mismo en el período de análisis",
    "remedied.same_as": "lo mismo en el período de análisis que {before} sin ellos",
    "remedied.short": "Entonces no se alcanza el objetivo del {target:g} %.",
    "remedied.no_check_fails": "ninguna comprobación deja de cumplirse",
    "remedied.one_fails": "una comprobación sigue sin cumplirse ({checks})",
    "remedied.some_fail": "{count} comprobaciones siguen sin cumplirse ({checks})",
    "remedied.not_priced": (
        "Los costos cuentan los precios indicados; lo que no tiene precio, o es más caro que el indicado, se suma a "
        "ellos: {items}."
    ),
    "remedied.none_computed": (
        "Los remedios de lo que no se cumple no se pueden calcular, así que no se sabe lo que cuestan: {checks}."
    ),
}
