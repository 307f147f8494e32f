"""Português das verificações do campo, do controlador e do lado CA, e do que partilham com os cabos."""

SENTENCES: dict[str, str] = {
    "unit.modules": "módulos",
    "unit.phases": "fases",
    "unit.hours_per_year": "h/ano",
    "unit.speed": "rpm",
    "source.controller": "a ficha técnica do controlador",
    "source.plate": "a placa de características da bomba",
    "source.plate_practice": "a placa de características da bomba; prática corrente, sem fonte",
    "source.plate_and_site": "a placa de características da bomba; os dados do local",
    "source.site": "os dados do local",
    "source.practice": "prática corrente, sem fonte",
    # what to look for where something was not given
    "check.look_for": "procure {things}",
    "check.asked.ac_volts": "'AC' ou '~' com volts na placa da bomba ou do controlador",
    "check.asked.grid_volts": "a tensão da rede",
    "check.asked.generator_volts": "a tensão do gerador",
    "check.asked.phases": "'1~' ou '3~' na placa da bomba ou do controlador",
    "check.asked.grid_phases": "as fases da rede",
    "check.asked.generator_phases": "as fases do gerador",
    "check.asked.hertz": "'Hz' na placa da bomba ou do controlador",
    "check.asked.grid_hertz": "a frequência da rede",
    "check.asked.generator_hertz": "a frequência do gerador",
    "check.supply.look_for_voltage": "procure a tensão da rede e do gerador",
    # modules in series
    "check.series.more.one": "mais um módulo em série",
    "check.series.more.two": "mais dois módulos em série",
    "check.series.more.three": "mais três módulos em série",
    "check.series.more.many": "mais {count} módulos em série",
    "check.series.less.one": "menos um módulo em série",
    "check.series.less.two": "menos dois módulos em série",
    "check.series.less.three": "menos três módulos em série",
    "check.series.less.many": "menos {count} módulos em série",
    "check.series.no_adding": (
        "nenhum módulo pode ser acrescentado em série até se conhecer a maior tensão CC do controlador"
    ),
    "check.series.not_even_one": (
        "nem um só destes módulos serve: dá {one_v:.0f} V em repouso com frio, e o máximo suportado são {most_v:g} "
        "V: um módulo de no máximo {rated_v} V em circuito aberto, ou outro controlador"
    ),
    "check.series.window_too_narrow": (
        "nenhum número destes módulos serve: pelo menos {fewest} para os {least_v:g} V precisos ao meio-dia mais "
        "quente, no máximo {most} para os {most_v:g} V suportados em repouso com frio: outro controlador ou outro "
        "módulo"
    ),
    "check.series.none_fits": "nenhum número de módulos em série serve: outro controlador ou outro módulo",
    "check.series.another": "outro controlador ou outro módulo",
    "check.string_open_circuit_voltage.compared": (
        "Tensão em circuito aberto de {modules} módulos na manhã mais fria ({coldest}), face ao limite do "
        "controlador ou da bomba"
    ),
    "check.string_open_circuit_voltage.compared_working_known": (
        "Tensão em circuito aberto de {modules} módulos na manhã mais fria ({coldest}), face ao limite do "
        "controlador ou da bomba; a maior tensão de trabalho é {highest_v:g} V"
    ),
    "check.string_open_circuit_voltage.compared_with_working": (
        "Tensão em circuito aberto de {modules} módulos na manhã mais fria ({coldest}), face à maior tensão de "
        "trabalho, porque o limite do controlador não foi indicado"
    ),
    "check.string_open_circuit_voltage.why": (
        "Antes de o motor arrancar, a fileira fria está a esta tensão; acima do limite ela destrói a electrónica."
    ),
    "check.string_open_circuit_voltage.look_for": (
        "procure 'max. input voltage', 'max. DC' ou 'Voc max.' na placa do controlador; nenhum módulo pode ser "
        "acrescentado em série até se conhecer a maior tensão CC do controlador"
    ),
    "check.string_open_circuit_voltage.remedy_until_known": (
        "procure 'max. input voltage', 'max. DC' ou 'Voc max.' na placa do controlador; até se conhecer, {remedy}"
    ),
    "check.string_open_circuit_voltage.source": (
        "a ficha técnica do controlador ou a placa; a tensão com frio segundo a IEC 62548"
    ),
    "check.module_system_voltage.compared": (
        "Tensão em circuito aberto de uma fileira com frio, face à tensão de sistema do módulo"
    ),
    "check.module_system_voltage.why": (
        "Acima dela o próprio isolamento do módulo pode falhar e pôr a moldura à tensão do campo."
    ),
    "check.module_system_voltage.look_for": "procure 'max. system voltage' nas costas do módulo",
    "check.module_system_voltage.source": "a ficha técnica do módulo; IEC 62548",
    "check.string_voltage_hot.compared": (
        "Tensão de trabalho de uma fileira ao meio-dia mais quente ({hottest_c:.1f} °C à sombra), face à mais baixa "
        "do controlador"
    ),
    "check.string_voltage_hot.why": (
        "Abaixo da tensão mais baixa do controlador a bomba perde potência justamente quando o sol é melhor, ou pára."
    ),
    "check.string_voltage_cold.compared": (
        "Tensão de trabalho de uma fileira na manhã mais fria ({coldest_c:.1f} °C), face à mais alta do controlador"
    ),
    "check.string_voltage_cold.why": (
        "Acima da maior tensão de trabalho do controlador o campo fica fora do seu melhor ponto ou é cortado."
    ),
    "check.string_voltage.look_for": "procure a gama de tensão CC ou MPP na ficha técnica do controlador",
    "check.modules_in_series.compared": (
        "Módulos em série, face aos números que cabem entre a tensão mais baixa ao meio-dia e o limite com frio"
    ),
    "check.modules_in_series.why": "Só estes números são seguros com frio e ainda funcionam com calor.",
    "check.modules_in_series.look_for": "procure a menor e a maior tensão CC na placa do controlador",
    "check.modules_in_series.source": "a ficha técnica do controlador; IEC 62548",
    "check.modules_in_series.span": "{fewest} a {most}",
    "check.modules_in_series.no_span": "nenhum",
    "check.modules_in_series.too_many.one": "um módulo a mais",
    "check.modules_in_series.too_many.two": "dois módulos a mais",
    "check.modules_in_series.too_many.three": "três módulos a mais",
    "check.modules_in_series.too_many.many": "{count} módulos a mais",
    "check.modules_in_series.too_few.one": "um módulo a menos",
    "check.modules_in_series.too_few.two": "dois módulos a menos",
    "check.modules_in_series.too_few.three": "três módulos a menos",
    "check.modules_in_series.too_few.many": "{count} módulos a menos",
    "check.window_hours.compared": (
        "Horas por ano em que a janela de tensão do controlador mantém o campo fora do seu melhor ponto; "
        "{percent:.1f}% da sua energia perde-se assim"
    ),
    "check.window_hours.why": "Nessas horas perde-se potência que foi paga.",
    "check.window_hours.source": (
        "cálculo horário do primeiro ano; {hours:.0f} horas é prática corrente, sem fonte, tal como o décimo da "
        "energia além do qual a verificação não é cumprida"
    ),
    # voltage, phases and frequency of grid and generator
    "check.connection.phase_and_neutral": "uma fase e neutro ({volts:.0f} V)",
    "check.connection.two_phases": "duas das fases ({volts:.0f} V)",
    "check.supply_voltage.nominal": "{volts:.4g} V",
    "check.supply_voltage.variation": "variação {percent}%",
    "check.supply_voltage.drop": "{percent:.1f}% no cabo",
    "check.supply_voltage.drop_not_given": "queda no cabo não indicada e não contada",
    "check.grid_voltage.compared": (
        "Tensão da rede no controlador, {low:.0f} a {high:.0f} V ({facts}), face a {least:g} a {most:g} V"
    ),
    "check.generator_voltage.compared": (
        "Tensão do gerador no controlador, {low:.0f} a {high:.0f} V ({facts}), face a {least:g} a {most:g} V"
    ),
    "check.grid_voltage.compared_not_given": "Tensão da rede no controlador, face aos limites CA da placa",
    "check.generator_voltage.compared_not_given": "Tensão do gerador no controlador, face aos limites CA da placa",
    "check.grid_voltage.source": "a placa de características da bomba; variação de {percent}%: os dados do local",
    "check.generator_voltage.source": (
        "a placa de características da bomba; variação de {percent}%: ISO 8528-5, de memória"
    ),
    "check.supply_voltage.why": (
        "Com tensão a menos o motor absorve mais corrente e pára; com tensão a mais sofre o isolamento."
    ),
    "check.supply_voltage.remedy_low": (
        "um estabilizador de tensão ou um transformador, escolhido e instalado por um electricista credenciado, ou "
        "uma bomba para menos tensão"
    ),
    "check.supply_voltage.remedy_thicker_cable": (
        "uma secção de {section_mm2:g} mm2 no cabo CA (não abrangido: malha de defeito à terra, curto-circuito e o "
        "dispositivo de protecção); ou um estabilizador de tensão ou um transformador, escolhido e instalado por um "
        "electricista credenciado, ou uma bomba para menos tensão"
    ),
    "check.supply_voltage.remedy_shorter_cable": (
        "um cabo CA mais curto (não abrangido: malha de defeito à terra, curto-circuito e o dispositivo de "
        "protecção); ou um estabilizador de tensão ou um transformador, escolhido e instalado por um electricista "
        "credenciado, ou uma bomba para menos tensão"
    ),
    "check.supply_voltage.remedy_high": (
        "um estabilizador de tensão ou um transformador, escolhido e instalado por um electricista credenciado, ou "
        "uma bomba para mais tensão"
    ),
    "check.grid_phases.compared": "Fases da rede, face às da placa",
    "check.generator_phases.compared": "Fases do gerador, face às da placa",
    "check.supply_phases.why": "Um motor trifásico não arranca com uma fase, e queima-se a tentar.",
    "check.supply_phases.why_one_of_three": (
        "Uma bomba monofásica carrega uma fase de três, pelo que só pode absorver um terço da potência."
    ),
    "check.grid_phases.remedy_connect_unknown": (
        "ligue uma fase e neutro, se a tensão e a empresa distribuidora o permitirem, por um electricista credenciado"
    ),
    "check.grid_phases.remedy_connect.phase_and_neutral": (
        "ligue uma fase e neutro ({volts:.0f} V), se a tensão e a empresa distribuidora o permitirem, por um "
        "electricista credenciado"
    ),
    "check.grid_phases.remedy_connect.two_phases": (
        "ligue duas das fases ({volts:.0f} V), se a tensão e a empresa distribuidora o permitirem, por um "
        "electricista credenciado"
    ),
    "check.generator_phases.remedy_connect_unknown": (
        "ligue uma fase e neutro, se a tensão e o fabricante do gerador o permitirem, por um electricista credenciado"
    ),
    "check.generator_phases.remedy_connect.phase_and_neutral": (
        "ligue uma fase e neutro ({volts:.0f} V), se a tensão e o fabricante do gerador o permitirem, por um "
        "electricista credenciado"
    ),
    "check.generator_phases.remedy_connect.two_phases": (
        "ligue duas das fases ({volts:.0f} V), se a tensão e o fabricante do gerador o permitirem, por um "
        "electricista credenciado"
    ),
    "check.grid_phases.remedy_three": (
        "uma rede trifásica, ou um variador que receba {given} e dê três, por um electricista credenciado"
    ),
    "check.generator_phases.remedy_three": (
        "um gerador trifásico, ou um variador que receba {given} e dê três, por um electricista credenciado"
    ),
    "check.grid_frequency.compared": (
        "Frequência da rede, face aos {wanted_hz:g} Hz da placa, {percent:g}% para cada lado"
    ),
    "check.generator_frequency.compared": (
        "Frequência do gerador, face aos {wanted_hz:g} Hz da placa, {percent:g}% para cada lado"
    ),
    "check.grid_frequency.compared_not_given": "Frequência da rede, face à da placa",
    "check.generator_frequency.compared_not_given": "Frequência do gerador, face à da placa",
    "check.supply_frequency.why": (
        "A velocidade acompanha a frequência: com menos, a altura desce com o quadrado; com mais, a potência sobe "
        "com o cubo."
    ),
    "check.supply_frequency.side.above": "{percent:.1f}% acima da placa",
    "check.supply_frequency.side.below": "{percent:.1f}% abaixo da placa",
    "check.supply_frequency.side.equal": "igual",
    "check.grid_frequency.remedy": "uma rede de {wanted_hz:g} Hz, ou um variador que produza a sua própria frequência",
    "check.generator_frequency.remedy": (
        "um gerador de {wanted_hz:g} Hz, ou um variador que produza a sua própria frequência"
    ),
    "check.supply_frequency.source": "IEC 60034-1, zona A; a zona B é uma advertência",
    "check.grid_power.compared": (
        "Potência que a ligação à rede dá, face à que o controlador absorve com o motor à potência nominal"
    ),
    "check.grid_power.compared_one_phase": (
        "Potência que a ligação à rede dá numa das suas fases, face à que o controlador absorve com o motor à "
        "potência nominal"
    ),
    "check.grid_power.why": "Uma ligação demasiado pequena dispara assim que a bomba trabalha à velocidade máxima.",
    "check.grid_power.remedy": (
        "uma ligação de pelo menos {needed_w} W, se a empresa distribuidora a conceder; e então também o seu cabo e "
        "a sua protecção"
    ),
    # size of the generator
    "check.generator.remedy": (
        "um gerador de potência nominal {rating_kw:g} kW ou um pouco mais, com cabo e dispositivo de protecção a "
        "condizer"
    ),
    "check.generator.remedy_nothing_left": (
        "nenhum gerador com esta redução de potência dá potência aqui: reveja a altitude e a redução de potência"
    ),
    "check.generator_running.compared": (
        "Gerador ({rating_kw:g} kW, dos quais restam {percent:.0f}% a {altitude_m:.0f} m e {hottest_c:.0f} °C), face "
        "ao que o controlador absorve à potência nominal"
    ),
    "check.generator_running.compared_one_phase": (
        "Gerador ({rating_kw:g} kW, dos quais restam {percent:.0f}% a {altitude_m:.0f} m e {hottest_c:.0f} °C e numa "
        "de três fases), face ao que o controlador absorve à potência nominal"
    ),
    "check.generator_running.why": "Um gerador sobrecarregado abranda, pára e queima o seu enrolamento.",
    "check.generator_running.source": "potência nominal segundo o utilizador, redução de potência como indicada",
    "check.generator_starting.compared_soft": (
        "Gerador com a redução de potência, face ao que arranca o motor suavemente por um variador, {good:g} vezes a "
        "potência em funcionamento (pelo menos {least:g})"
    ),
    "check.generator_starting.compared": (
        "Gerador com a redução de potência, face ao que arranca o motor directamente na linha com {kva} kVA (letra "
        "de código {code}) e uma queda momentânea de {good_dip:.0f}% ({least_kw} kW para {most_dip:.0f}%)"
    ),
    "check.generator_starting.compared_assumed": (
        "Gerador com a redução de potência, face ao que arranca o motor directamente na linha com {kva} kVA (letra "
        "de código {code}, suposta) e uma queda momentânea de {good_dip:.0f}% ({least_kw} kW para {most_dip:.0f}%)"
    ),
    "check.generator_starting.why": (
        "Num gerador que não consegue arrancar o motor a tensão cai a fundo; o motor zumbe e aquece."
    ),
    "check.generator_starting.source_direct": (
        "kVA com rotor bloqueado por letra de código, NEMA MG 1 (de memória); queda na reactância transitória do "
        "alternador; queda de {good_dip:.0f}%: ISO 8528-5, classe G1 (de memória); {most_dip:.0f}% é prática "
        "corrente, sem fonte"
    ),
    "check.generator_loading.compared": (
        "Carga do gerador com o motor à potência nominal, face a {low:.0f} a {high:.0f}% da sua potência nominal "
        "reduzida"
    ),
    "check.generator_loading.why": (
        "Um gerador pouco carregado acumula carvão; um carregado horas a fio acima da sua potência principal "
        "gasta-se cedo."
    ),
    "check.generator_loading.remedy_light": "{remedy}, ou outras cargas a par da bomba",
    "check.generator_loading.remedy_other_loads": (
        "outras cargas a par da bomba: um gerador mais pequeno não a arrancaria"
    ),
    "check.generator_loading.source": (
        "{low:.0f}%: prática da NFPA 110; {high:.0f}% de carga média da potência principal: ISO 8528-1"
    ),
}
