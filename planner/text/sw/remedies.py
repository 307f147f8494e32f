"""Kiswahili cha masuluhisho yaliyotekelezwa: faili lake, gharama zake na matokeo yake."""

SENTENCES: dict[str, str] = {
    "apply.note": "suluhisho: {what}",
    "apply.note_was": "suluhisho: {what}, awali {before}",
    "apply.note_path": "kutoka folda ya faili hili",
    "apply.heading": "Masuluhisho yaliyotekelezwa",
    "apply.none": "Hakuna ukaguzi ulioshindikana: hakuna cha kutekeleza.",
    "apply.none_computed": "Hakuna suluhisho linaloweza kukokotolewa.",
    "apply.one": "Kwa {topic}, {what}: {remedy}",
    "apply.left": "Yamebaki kufanywa, kwa kuwa hayawezi kukokotolewa, kwa {topic}, {what}: {remedy}",
    "apply.comments_lost": "Maelezo na mpangilio wa faili havikuweza kuhifadhiwa.",
    "apply.nothing_installed": (
        "Faili husema kinachopaswa kujengwa au kununuliwa; kisichohusishwa na suluhisho, na kila takwimu yake, ni "
        "cha mafundi wenye leseni kuthibitisha."
    ),
    "apply.wrote_clean": "Imeandikwa: {file}: hakuna ukaguzi ulioshindikana.",
    "apply.wrote_one_fails": "Imeandikwa: {file}: ukaguzi mmoja bado umeshindikana.",
    "apply.wrote_fail": "Imeandikwa: {file}: kaguzi {count} bado zimeshindikana.",
    "remedy_item.cables_dc_section_mm2": "waya wa safu ya paneli wa {value:g} mm2",
    "remedy_item.cables_ac_section_mm2": "waya wa AC wa {value:g} mm2",
    "remedy_item.cables_drop_section_mm2": "waya wa kisimani wa {value:g} mm2",
    "remedy_item.cables_ac_protective_device_a": "kifaa cha kinga cha {value:g} A kwa waya wa AC",
    "remedy_item.cables_drop_protective_device_a": "kifaa cha kinga cha {value:g} A kwa waya wa kisimani",
    "remedy_item.cables_dc_voltage_class_v": "waya wa safu ya paneli uliotengenezwa kwa {value:g} V DC",
    "remedy_item.cables_dc_outdoor": "waya wa safu ya paneli uliotengenezwa kwa jua na mvua",
    "remedy_item.cables_drop_length_m": "waya wa kisimani wa {value:g} m",
    "remedy_item.sources_grid_power_limit_w": "muunganisho wa gridi wa {value:g} W",
    "remedy_item.sources_generator_rating_kw": "jenereta la {value:g} kW",
    "remedy_item.sources_solar_modules_in_series": "paneli {value:g} katika mfululizo",
    "remedy_item.sources_solar_strings": "mifululizo: {value:g}",
    "remedy_item.sources_solar_strings_max": "mifululizo isiyozidi {value:g}",
    "remedy_item.sources_solar_string_fuse_a": "fyuzi za mifululizo za {value:g} A",
    "remedy_item.controller_power_limit_w": "kidhibiti cha {value:g} W",
    "remedy_item.pipeline_segments_pipe": "bomba {value}",
    "remedy_item.pipeline_riser_pipe": "bomba la kisimani {value}",
    "remedy_item.pipeline_pipe": "bomba kuu la {value}",
    "remedy_item.pipeline_stop_time_s": "kusimama kwa pampu kwa {value:g} s",
    "remedy_item.pipeline_profile_air_valve": "vali za hewa kwenye sehemu za juu",
    "remedy_item.borehole_pump_depth_m": "pampu kwenye {value:g} m",
    "remedy_item.borehole_flow_sleeve_diameter_mm": "mkono wa mtiririko wa {value:g} mm",
    "remedy_item.tank_volume_m3": "tanki la {value:g} m3",
    "remedy_item.tank_outlet_height_m": "mdomo wa kutolea maji wa tanki kwenye {value:g} m",
    "remedied.answer": "Kwa masuluhisho haya ({remedies}) {option} hukidhi {met:.1f} % ya maji, na {checks}.",
    "remedied.answer_priced": (
        "Kwa masuluhisho haya ({remedies}) {option} hugharimu {cost}, hukidhi {met:.1f} % ya maji, na {checks}."
    ),
    "remedied.more": "{gap} zaidi katika kipindi cha uchambuzi",
    "remedied.more_than": "{gap} zaidi katika kipindi cha uchambuzi kuliko {before} bila hayo",
    "remedied.less": "pungufu kwa {gap} katika kipindi cha uchambuzi",
    "remedied.less_than": "pungufu kwa {gap} katika kipindi cha uchambuzi kuliko {before} bila hayo",
    "remedied.same": "kiasi kilekile katika kipindi cha uchambuzi",
    "remedied.same_as": "kiasi kilekile katika kipindi cha uchambuzi kama {before} bila hayo",
    "remedied.short": "Hapo lengo la {target:g} % halitimizwi.",
    "remedied.no_check_fails": "hakuna ukaguzi ulioshindikana",
    "remedied.one_fails": "ukaguzi mmoja bado umeshindikana ({checks})",
    "remedied.some_fail": "kaguzi {count} bado zimeshindikana ({checks})",
    "remedied.not_priced": (
        "Gharama huhesabu bei zilizowekwa; kisicho na bei, au kilicho ghali kuliko kilichowekwa, huziongeza: {items}."
    ),
    "remedied.none_computed": (
        "Masuluhisho ya yaliyoshindikana hayawezi kukokotolewa, hivyo gharama zake hazijulikani: {checks}."
    ),
}
