"""Português das verificações dos cabos."""

SENTENCES: dict[str, str] = {
    "check.dc_cable.compared": "Cabo do campo fotovoltaico ao controlador: queda de tensão e corrente admissível",
    "check.ac_cable.compared": "Cabo da rede ou do gerador ao controlador: queda de tensão e corrente admissível",
    "check.drop_cable.compared": "Cabo do controlador até ao motor no furo: queda de tensão e corrente admissível",
    "check.dc_cable.look_for": (
        "meça o percurso do campo fotovoltaico ao controlador e procure a secção (mm2) impressa no cabo; indique "
        "ambos para o cabo do campo"
    ),
    "check.ac_cable.look_for": (
        "meça o percurso da rede ou do gerador ao controlador e procure a secção (mm2) impressa no cabo; indique "
        "ambos para o cabo CA"
    ),
    "check.drop_cable.look_for": (
        "meça o percurso do controlador até ao motor no furo e procure a secção (mm2) impressa no cabo; indique "
        "ambos para o cabo de descida"
    ),
    "check.cable.source": "IEC 60364-5-52 anexo G, outros usos que não a iluminação numa rede pública",
    "check.cable.array": "Cabo do campo com {strings} fileira(s)",
    "check.cable.array_open": "Cabo do campo com {strings} fileira(s), que conviriam (o número está em aberto)",
    "check.cable.grid": "Cabo CA com a rede",
    "check.cable.generator": "Cabo CA com o gerador",
    "check.cable.drop": "Cabo de descida",
    "check.cable_drop.compared": (
        "{cable}, {length_m:g} m de {section_mm2:g} mm2 ({ohm:.3f} ohm a {conductor_c:g} °C): tensão perdida a "
        "{current_a} A e {voltage_v} V"
    ),
    "check.cable_drop.why": (
        "A tensão perdida no cabo é potência perdida para toda a vida, e tensão a menos pára o motor."
    ),
    "check.cable_drop.source": "prática corrente, sem fonte; resistência segundo a IEC 60228",
    "check.ac_cable_drop.source": (
        "IEC 60364-5-52 anexo G, outros usos que não a iluminação numa rede pública; resistência segundo a IEC 60228"
    ),
    "check.cable_ampacity.compared": (
        "{cable}, {section_mm2:g} mm2 instalado como {installation} a {ambient_c:.0f} °C: corrente admissível, face "
        "à corrente de projecto"
    ),
    "check.cable_ampacity.compared_grouped": (
        "{cable}, {section_mm2:g} mm2 instalado como {installation} a {ambient_c:.0f} °C, {circuits} circuitos "
        "juntos (factor {factor:g}): corrente admissível, face à corrente de projecto"
    ),
    "check.cable_ampacity.why": (
        "Um cabo que leva mais do que a sua corrente admissível sobreaquece e pode provocar um incêndio."
    ),
    "check.cable_ampacity.source": "IEC 60364-5-52, PVC, com os factores de temperatura ambiente e de agrupamento",
    "check.cable_ampacity.source_datasheet": "a ficha técnica do cabo",
    "check.cable.remedy": (
        "uma secção de {section_mm2:g} mm2, a menor que cumpre queda de tensão e corrente admissível com PVC, "
        "instalada sozinha como {installation} a {ambient_c:.0f} °C; não abrangido: {not_covered}"
    ),
    "check.cable.remedy_grouped": (
        "uma secção de {section_mm2:g} mm2, a menor que cumpre queda de tensão e corrente admissível com PVC, "
        "instalada com {circuits} circuitos juntos como {installation} a {ambient_c:.0f} °C; não abrangido: "
        "{not_covered}"
    ),
    "check.cable.remedy_none": (
        "um percurso mais curto, ou outro cabo projectado por um electricista credenciado: nenhuma secção até 50 mm2 "
        "basta"
    ),
    "check.cable.not_covered.faults": "malha de defeito à terra e curto-circuito",
    "check.cable.not_covered.device": "o dispositivo de protecção",
    "check.cable.not_covered.outdoors": "isolamento para CC, sol e intempérie",
    "check.cable.not_covered.ground": "profundidade, tubos e secura do solo",
    "check.cable.not_covered.ground_grouping": "o factor de agrupamento próprio do solo",
    "check.ac_cable_protection.compared": (
        "Dispositivo de protecção do cabo CA, {device}, face aos {carried_a} A que o cabo deve levar e aos {most_a} "
        "A que o protegem"
    ),
    "check.drop_cable_protection.compared": (
        "Dispositivo de protecção do cabo de descida, {device}, face aos {carried_a} A que o cabo deve levar e aos "
        "{most_a} A que o protegem"
    ),
    "check.ac_cable_protection.compared_not_given": "Dispositivo de protecção do cabo CA",
    "check.cable_protection.why": (
        "Um dispositivo demasiado pequeno dispara com a bomba; um demasiado grande deixa arder o cabo antes de "
        "disparar."
    ),
    "check.cable_protection.look_for": (
        "procure a corrente nominal no disjuntor ou fusível antes do cabo; deve ser pelo menos {carried_a} A e no "
        "máximo {most_a} A"
    ),
    "check.cable_protection.device.breaker": "um disjuntor de {rating_a:g} A",
    "check.cable_protection.device.fuse": "um fusível gG de {rating_a:g} A",
    "check.cable_protection.remedy": (
        "{device}, com a protecção própria do motor contra sobrecarga a par; não abrangido: malha de defeito à terra "
        "e curto-circuito"
    ),
    "check.cable_protection.remedy_and_cable": (
        "{device}, com a protecção própria do motor contra sobrecarga a par, e {remedy}"
    ),
    "check.cable_protection.remedy_none": (
        "um dispositivo para mais corrente do que os de tamanho usual, escolhido por um electricista credenciado"
    ),
    "check.cable_protection.source": "IEC 60364-4-43:2008, 433.1: Ib <= In <= Iz e I2 <= 1,45 Iz",
    "check.dc_cable_voltage.compared": (
        "Tensão em circuito aberto de uma fileira com frio, face à tensão CC para que o cabo do campo é feito"
    ),
    "check.dc_cable_voltage.why": (
        "Um isolamento que não é feito para a tensão falha, e um arco em CC não se apaga sozinho."
    ),
    "check.dc_cable_voltage.look_for": "procure a tensão CC impressa no cabo, como 'DC 1500 V'",
    "check.dc_cable_voltage.remedy": "um cabo feito para fotovoltaico (EN 50618 ou IEC 62930, 1500 V CC)",
    "check.dc_cable_voltage.source": "IEC 62548; o cabo para fotovoltaico é feito para 1500 V CC (EN 50618, IEC 62930)",
    "check.dc_cable_outdoor.compared": "Cabo do campo, face ao sol e à intempérie",
    "check.dc_cable_outdoor.made_for_it": "feito para isso",
    "check.dc_cable_outdoor.not_made_for_it": "não feito para isso",
    "check.dc_cable_outdoor.why": (
        "Um isolamento que o sol e a chuva gastam perde corrente para a terra ao fim de poucos anos, e dá choques ou "
        "arde."
    ),
    "check.dc_cable_outdoor.look_for": "procure 'EN 50618', 'IEC 62930' ou 'H1Z2Z2-K' impresso no cabo",
    "check.dc_cable_outdoor.remedy": (
        "um cabo feito para fotovoltaico (EN 50618 ou IEC 62930), ou tubo de protecção que resista ao sol em todo o "
        "seu comprimento"
    ),
    "check.dc_cable_outdoor.source": "IEC 62548; EN 50618 e IEC 62930",
    "check.drop_cable_length.compared": "Comprimento do cabo de descida, face à profundidade da bomba",
    "check.drop_cable_length.why": "Uma emenda debaixo de água é a primeira coisa a falhar.",
    "check.drop_cable_length.remedy": "um cabo de descida de pelo menos {length_m} m numa só peça",
}
