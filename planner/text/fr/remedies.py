"""Français des remèdes appliqués : le fichier où ils sont écrits, ce qu'ils coûtent et ce qu'ils donnent."""

SENTENCES: dict[str, str] = {
    # the file
    "apply.note": "remède : {what}",
    "apply.note_was": "remède : {what}, était {before}",
    "apply.note_path": "depuis le dossier de ce fichier",
    "apply.heading": "Remèdes appliqués",
    "apply.none": "Aucune vérification n'est non conforme : il n'y a rien à appliquer.",
    "apply.none_computed": "Aucun des remèdes ne peut être calculé.",
    "apply.one": "Sujet {topic}, {what} : {remedy}",
    "apply.left": "Reste à faire, car non calculable, sujet {topic}, {what} : {remedy}",
    "apply.comments_lost": "Les commentaires et l'ordre du fichier n'ont pu être gardés.",
    "apply.nothing_installed": (
        "Le fichier dit ce qui est à construire ou à acheter ; ce qu'un remède ne couvre pas, et chacun de ses "
        "chiffres, est à confirmer par un professionnel agréé."
    ),
    "apply.wrote_clean": "Écrit : {file} ; aucune vérification non conforme.",
    "apply.wrote_one_fails": "Écrit : {file} ; une vérification reste non conforme.",
    "apply.wrote_fail": "Écrit : {file} ; {count} vérifications restent non conformes.",
    # what is changed, in a few words inside a sentence
    "remedy_item.cables_dc_section_mm2": "câble du champ de {value:g} mm2",
    "remedy_item.cables_ac_section_mm2": "câble CA de {value:g} mm2",
    "remedy_item.cables_drop_section_mm2": "câble de descente de {value:g} mm2",
    "remedy_item.cables_ac_protective_device_a": "dispositif de protection de {value:g} A pour le câble CA",
    "remedy_item.cables_drop_protective_device_a": "dispositif de protection de {value:g} A pour le câble de descente",
    "remedy_item.cables_dc_voltage_class_v": "câble du champ fait pour {value:g} V CC",
    "remedy_item.cables_dc_outdoor": "câble du champ fait pour le soleil et les intempéries",
    "remedy_item.cables_drop_length_m": "câble de descente de {value:g} m",
    "remedy_item.sources_grid_power_limit_w": "raccordement au réseau électrique pour {value:g} W",
    "remedy_item.sources_generator_rating_kw": "groupe électrogène de {value:g} kW",
    "remedy_item.sources_solar_modules_in_series": "{value:g} modules en série",
    "remedy_item.sources_solar_strings": "{value:g} chaîne(s)",
    "remedy_item.sources_solar_strings_max": "au plus {value:g} chaîne(s)",
    "remedy_item.sources_solar_string_fuse_a": "fusibles de chaîne de {value:g} A",
    "remedy_item.controller_power_limit_w": "variateur pour {value:g} W",
    "remedy_item.pipeline_segments_pipe": "tuyau {value}",
    "remedy_item.pipeline_riser_pipe": "colonne montante {value}",
    "remedy_item.pipeline_pipe": "conduite en {value}",
    "remedy_item.pipeline_stop_time_s": "arrêt de la pompe en {value:g} s",
    "remedy_item.pipeline_profile_air_valve": "ventouses aux points hauts",
    "remedy_item.borehole_pump_depth_m": "pompe à {value:g} m",
    "remedy_item.borehole_flow_sleeve_diameter_mm": "chemise de refroidissement de {value:g} mm",
    "remedy_item.tank_volume_m3": "réservoir de {value:g} m3",
    "remedy_item.tank_outlet_height_m": "sortie du réservoir à {value:g} m",
    # what they come to
    "remedied.answer": (
        "Avec les remèdes ({remedies}), {option} couvre {met:.1f} % de l'eau, et résultat des vérifications : {checks}."
    ),
    "remedied.answer_priced": (
        "Avec les remèdes ({remedies}), {option} coûte {cost}, couvre {met:.1f} % de l'eau, et résultat des "
        "vérifications : {checks}."
    ),
    "remedied.more": "{gap} de plus sur la période d'analyse",
    "remedied.more_than": "{gap} de plus sur la période d'analyse que sans eux ({before})",
    "remedied.less": "{gap} de moins sur la période d'analyse",
    "remedied.less_than": "{gap} de moins sur la période d'analyse que sans eux ({before})",
    "remedied.same": "autant sur la période d'analyse",
    "remedied.same_as": "autant sur la période d'analyse que sans eux ({before})",
    "remedied.short": "L'objectif de {target:g} % n'est alors pas atteint.",
    "remedied.no_check_fails": "aucune n'est non conforme",
    "remedied.one_fails": "une reste non conforme ({checks})",
    "remedied.some_fail": "{count} restent non conformes ({checks})",
    "remedied.not_priced": (
        "Les coûts comptent les prix indiqués ; ce qui n'en a pas, ou coûte plus que le prix indiqué, s'y ajoute : "
        "{items}."
    ),
    "remedied.none_computed": (
        "Les remèdes de ce qui n'est pas conforme ne peuvent être calculés, leur coût n'est donc pas connu : {checks}."
    ),
}
