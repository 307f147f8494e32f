"""Português dos remédios aplicados: o ficheiro onde são escritos, o que custam e o que dão."""

SENTENCES: dict[str, str] = {
    # the file
    "apply.note": "remédio: {what}",
    "apply.note_was": "remédio: {what}, era {before}",
    "apply.note_path": "a partir da pasta deste ficheiro",
    "apply.heading": "Remédios aplicados",
    "apply.none": "Nenhuma verificação falha: não há nada a aplicar.",
    "apply.none_computed": "Nenhum dos remédios pode ser calculado.",
    "apply.one": "Para {topic}, {what}: {remedy}",
    "apply.left": "Fica por fazer, porque não pode ser calculado, para {topic}, {what}: {remedy}",
    "apply.comments_lost": "Não foi possível manter os comentários e a ordem do ficheiro.",
    "apply.nothing_installed": (
        "O ficheiro diz o que há a construir ou a comprar; o que um remédio não abrange, e todos os seus números, "
        "cabe a profissionais credenciados confirmar."
    ),
    "apply.wrote_clean": "Escrito: {file}; nenhuma verificação falha.",
    "apply.wrote_one_fails": "Escrito: {file}; uma verificação ainda falha.",
    "apply.wrote_fail": "Escrito: {file}; {count} verificações ainda falham.",
    # what is changed, in a few words inside a sentence
    "remedy_item.cables_dc_section_mm2": "cabo do campo de {value:g} mm2",
    "remedy_item.cables_ac_section_mm2": "cabo CA de {value:g} mm2",
    "remedy_item.cables_drop_section_mm2": "cabo de descida de {value:g} mm2",
    "remedy_item.cables_ac_protective_device_a": "dispositivo de protecção de {value:g} A para o cabo CA",
    "remedy_item.cables_drop_protective_device_a": "dispositivo de protecção de {value:g} A para o cabo de descida",
    "remedy_item.cables_dc_voltage_class_v": "cabo do campo feito para {value:g} V CC",
    "remedy_item.cables_dc_outdoor": "cabo do campo feito para sol e intempérie",
    "remedy_item.cables_drop_length_m": "cabo de descida de {value:g} m",
    "remedy_item.sources_grid_power_limit_w": "ligação à rede para {value:g} W",
    "remedy_item.sources_generator_rating_kw": "gerador de {value:g} kW",
    "remedy_item.sources_solar_modules_in_series": "{value:g} módulos em série",
    "remedy_item.sources_solar_strings": "{value:g} fileira(s)",
    "remedy_item.sources_solar_strings_max": "no máximo {value:g} fileira(s)",
    "remedy_item.sources_solar_string_fuse_a": "fusíveis de fileira de {value:g} A",
    "remedy_item.controller_power_limit_w": "controlador para {value:g} W",
    "remedy_item.pipeline_segments_pipe": "tubo {value}",
    "remedy_item.pipeline_riser_pipe": "coluna montante {value}",
    "remedy_item.pipeline_pipe": "conduta elevatória de {value}",
    "remedy_item.pipeline_stop_time_s": "paragem da bomba em {value:g} s",
    "remedy_item.pipeline_profile_air_valve": "ventosas nos pontos altos",
    "remedy_item.borehole_pump_depth_m": "bomba a {value:g} m",
    "remedy_item.borehole_flow_sleeve_diameter_mm": "camisa de arrefecimento de {value:g} mm",
    "remedy_item.tank_volume_m3": "reservatório de {value:g} m3",
    "remedy_item.tank_outlet_height_m": "saída do reservatório a {value:g} m",
    # what they come to
    "remedied.answer": "Com os remédios ({remedies}) a opção {option} cobre {met:.1f}% da água, e {checks}.",
    "remedied.answer_priced": (
        "Com os remédios ({remedies}) a opção {option} custa {cost}, cobre {met:.1f}% da água, e {checks}."
    ),
    "remedied.more": "mais {gap} no período de análise",
    "remedied.more_than": "mais {gap} no período de análise do que {before} sem eles",
    "remedied.less": "menos {gap} no período de análise",
    "remedied.less_than": "menos {gap} no período de análise do que {before} sem eles",
    "remedied.same": "o mesmo no período de análise",
    "remedied.same_as": "o mesmo no período de análise que {before} sem eles",
    "remedied.short": "O objectivo de {target:g}% não é então cumprido.",
    "remedied.no_check_fails": "nenhuma verificação falha",
    "remedied.one_fails": "uma verificação ainda falha ({checks})",
    "remedied.some_fail": "{count} verificações ainda falham ({checks})",
    "remedied.not_priced": (
        "Os custos contam os preços indicados; o que não tem preço, ou é mais caro do que o indicado, acresce: {items}."
    ),
    "remedied.none_computed": (
        "Os remédios do que falha não podem ser calculados, pelo que não se sabe quanto custam: {checks}."
    ),
}
