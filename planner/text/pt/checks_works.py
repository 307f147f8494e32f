"""Português das verificações do furo, do arrefecimento, do reservatório e da água, e do que partilham."""

SENTENCES: dict[str, str] = {
    # what all checks of a site share
    "basis.duty_flow": "{flow} m3/h (o caudal de funcionamento)",
    "basis.planned_flow": "{flow} m3/h (o caudal com que contar com uma bomba que o eleve)",
    "basis.drawn_flow": "{flow} m3/h (o caudal que a bomba captaria)",
    "basis.coldest_given": "{temperature} °C, como indicado",
    "basis.coldest_of_weather": (
        "{temperature} °C, a hora mais fria da meteorologia menos {allowance} K (nenhum valor foi indicado)"
    ),
    "basis.better_pump": (
        "uma bomba de cerca de {head} m a {flow} m3/h nominais (cerca de {power} kW se {share}% chegarem à água)"
    ),
    # borehole
    "check.specific_capacity.compared": (
        "Rebaixamento segundo um caudal específico de {given:g} m3/h por m ao caudal seguro de exploração de "
        "{flow:g} m3/h, face aos {there_m:.1f} m de água acima da aspiração"
    ),
    "check.specific_capacity.why": (
        "Escrito ao contrário, faz parecer forte um furo fraco, e a bomba é pendurada onde trabalha em seco."
    ),
    "check.specific_capacity.remedy": (
        "leia de novo o ensaio de bombagem: se ele diz {given:g} m de rebaixamento por m3/h, o caudal específico é "
        "{inverse}, e o caudal seguro de exploração rebaixa a água {drawdown_m:.1f} m"
    ),
    "check.specific_capacity.source": (
        "os dados do local; uma dúvida abaixo de {percent:.0f}% é suposta, prática corrente"
    ),
    "check.safe_yield.compared": (
        "Caudal que a bomba dá aqui à velocidade máxima, face ao caudal seguro de exploração do furo"
    ),
    "check.safe_yield.compared_rated": "Caudal nominal da bomba, face ao caudal seguro de exploração do furo",
    "check.safe_yield.why": (
        "A bombagem em excesso arrasta areia, deixa a bomba trabalhar em seco e pode arruinar o furo para sempre."
    ),
    "check.safe_yield.remedy_speed": (
        "regule a velocidade mais alta do variador para {speed}%, ou uma bomba de menos caudal"
    ),
    "check.safe_yield.remedy_pump": (
        "uma bomba de não mais de {flow} m3/h nominais, a cerca de {head} m; até lá um variador ou uma válvula que a "
        "limite a {limit} m3/h"
    ),
    "check.safe_yield.source": (
        "os dados do local (ensaio de bombagem); uma bomba de caudal nominal acima do caudal seguro não cumpre, uma "
        "que possa ser limitada pela velocidade cumpre"
    ),
    "check.pumping_level.compared": "Profundidade da água em {month} a {flow}, face à aspiração da bomba",
    "check.pumping_level.why": "Uma bomba que aspira ar perde a escorva, trabalha em seco e queima-se.",
    "check.pumping_level.source": "os dados do local",
    "check.deeper.remedy": "instale a bomba {by} m mais fundo, com tubagem e cabo a condizer, ou {less}",
    "check.deeper.remedy_if_bottom": (
        "instale a bomba {by} m mais fundo, com tubagem e cabo a condizer, depois de o relatório de perfuração "
        "mostrar que o fundo está mais abaixo, ou {less}"
    ),
    "check.deeper.remedy_if_screen": (
        "instale a bomba {by} m mais fundo, com tubagem e cabo a condizer, depois de o relatório de perfuração "
        "mostrar que o filtro está mais abaixo, ou {less}"
    ),
    "check.deeper.remedy_if_both": (
        "instale a bomba {by} m mais fundo, com tubagem e cabo a condizer, depois de o relatório de perfuração "
        "mostrar que fundo e filtro estão mais abaixo, ou {less}"
    ),
    "check.deeper.remedy_shallow": "{less}: o furo não é bastante fundo para pendurar a bomba mais abaixo",
    "check.deeper.remedy_in_screen": (
        "{less}: mais abaixo a bomba ficaria dentro do filtro, o que arrasta areia e deixa o motor quente"
    ),
    "check.deeper.less": "bombeie menos",
    "check.deeper.less_held": (
        "bombeie menos (o cálculo horário limita-a a {flow} m3/h: um variador regulado para no máximo {speed}% da "
        "velocidade e um corte por nível baixo)"
    ),
    "check.submergence.compared": "Água acima da aspiração em {month} a {flow}, face ao que a bomba pede",
    "check.submergence.why": "Pouca água acima da aspiração deixa entrar ar e a bomba cavita.",
    "check.submergence.look_for": "procure 'minimum submergence' ou NPSH na ficha técnica da bomba",
    "check.submergence.source": "a placa de características da bomba",
    "check.level_through_life.compared": (
        "Profundidade da água em {month} do último ano a {flow}, com o nível estático a descer {decline} m e o "
        "caudal específico {loss}% por ano, face à aspiração menos o que tem de ficar acima dela"
    ),
    "check.level_through_life.compared_dry": (
        "Profundidade da água em {month} do último ano a {flow}, com o nível estático a descer {decline} m e o "
        "caudal específico {loss}% por ano, face à aspiração menos o que tem de ficar acima dela; demasiado funda a "
        "partir do ano {year}"
    ),
    "check.level_through_life.why": (
        "Uma bomba pendurada para a água de hoje trabalha em seco em anos posteriores, e o cálculo horário deixa-a "
        "bombear cada vez menos."
    ),
    "check.level_through_life.source": "descidas como indicadas ou supostas; um furo limpo a tempo desce menos",
    "check.screen.compared": "Profundidade da água em {month} a {flow}, face ao topo do filtro",
    "check.screen.why": "Um filtro que fica em seco entope e deixa entrar ar na água.",
    "check.screen.look_for": "procure a profundidade do filtro no relatório de perfuração",
    "check.screen.source_log": "o relatório de perfuração",
    "check.screen.remedy": "bombeie menos, para que a água fique acima do filtro",
    "check.screen.source": "os dados do local; mantê-lo molhado é prática corrente, sem fonte",
    "check.casing_clearance.compared_open": "Diâmetro interior do revestimento, face ao diâmetro exterior da bomba",
    "check.casing_clearance.compared": (
        "Diâmetro interior do revestimento, face ao diâmetro exterior da bomba de {outer} mm e a {room} mm de folga"
    ),
    "check.casing_clearance.why": "Uma bomba que fica presa não se volta a içar e pode custar o furo.",
    "check.casing_clearance.source_open": "a placa de características da bomba e os dados do local",
    "check.casing_clearance.remedy": "uma bomba de no máximo {outer} mm de diâmetro exterior",
    "check.casing_clearance.source": (
        "a placa de características da bomba (tamanho: NEMA MG 1 parte 18); a folga é prática corrente, sem fonte"
    ),
    "check.motor_size.look_for_casing": "procure o diâmetro interior do revestimento no relatório de perfuração",
    "check.motor_size.look_for_motor": "procure na placa o diâmetro exterior ou o tamanho em polegadas",
    "check.motor_size.look_for_both": (
        "procure o diâmetro interior do revestimento no relatório de perfuração e, na placa, o diâmetro exterior ou "
        "o tamanho em polegadas"
    ),
    "check.below_motor.compared": "Furo que resta abaixo do motor",
    "check.below_motor.compared_intake": (
        "Furo que resta abaixo da aspiração, do qual se deve tirar o comprimento do motor"
    ),
    "check.below_motor.why": "A areia junta-se no fundo; um motor metido nela sobreaquece e fica preso.",
    "check.below_motor.look_for": "procure a profundidade do furo no relatório de perfuração, ou meça-a com sonda",
    "check.below_motor.source_log": "o relatório de perfuração",
    "check.below_motor.look_for_length": "procure o comprimento do motor no desenho da ficha técnica",
    "check.below_motor.source_plate": "a placa de características da bomba",
    "check.below_motor.remedy": "instale a bomba {by} m mais acima",
    "check.below_motor.source": "os dados do local; {sump} m de fundo livre é prática corrente, sem fonte",
    "check.daily_limit.compared": (
        "Água captada no mês de maior consumo, {first} m3/dia no primeiro ano e {most} no máximo, face ao limite diário"
    ),
    "check.daily_limit.compared_over": (
        "Água captada no mês de maior consumo, {first} m3/dia no primeiro ano e {most} no máximo, face ao limite "
        "diário; a mais a partir do ano {year}"
    ),
    "check.daily_limit.compared_open": (
        "Água captada no mês de maior consumo, {first} m3/dia no primeiro ano e {most} no máximo, face à licença"
    ),
    "check.daily_limit.why": "Uma licença ultrapassada pode ser retirada, e com ela o aquífero.",
    "check.daily_limit.look_for": (
        "procure o volume diário na licença de captação ou no relatório do ensaio de bombagem"
    ),
    "check.daily_limit.source_permit": "a licença de captação",
    "check.daily_limit.remedy": "uma licença para {volume}, ou menos necessidades",
    "check.daily_limit.source": "os dados do local (licença ou ensaio)",
    # cooling of the motor
    "check.motor_cooling.compared": (
        "Velocidade da água ao longo do motor no revestimento a {flow}, face à que o arrefece"
    ),
    "check.motor_cooling.compared_small": (
        "Velocidade da água ao longo do motor no revestimento a {flow}, face à que o arrefece; um motor de quatro "
        "polegadas abaixo de 3 hp não pede nenhuma"
    ),
    "check.motor_cooling.compared_beside": (
        "Velocidade da água ao longo do motor no revestimento a {flow}, face à que o arrefece; a aspiração fica ao "
        "lado ou abaixo do filtro, pelo que a água não passa pelo motor"
    ),
    "check.motor_cooling.compared_small_beside": (
        "Velocidade da água ao longo do motor no revestimento a {flow}, face à que o arrefece; um motor de quatro "
        "polegadas abaixo de 3 hp não pede nenhuma; a aspiração fica ao lado ou abaixo do filtro, pelo que a água "
        "não passa pelo motor"
    ),
    "check.motor_cooling.compared_sleeve": (
        "Velocidade da água ao longo do motor na camisa de arrefecimento a {flow}, face à que o arrefece"
    ),
    "check.motor_cooling.compared_sleeve_small": (
        "Velocidade da água ao longo do motor na camisa de arrefecimento a {flow}, face à que o arrefece; um motor "
        "de quatro polegadas abaixo de 3 hp não pede nenhuma"
    ),
    "check.motor_cooling.why": (
        "Um motor submersível é arrefecido pela água que passa por ele; em água parada o seu enrolamento queima-se."
    ),
    "check.motor_cooling.remedy": (
        "uma camisa de arrefecimento de no máximo {width} mm de diâmetro interior sobre o motor"
    ),
    "check.motor_cooling.remedy_if_room": (
        "uma camisa de arrefecimento de no máximo {width} mm de diâmetro interior sobre o motor, se o revestimento "
        "tiver folga para ela"
    ),
    "check.motor_cooling.remedy_motor": (
        "um motor mais pequeno, ou um que o fabricante garanta para este caudal e esta água: não cabe ali nenhuma "
        "camisa de arrefecimento"
    ),
    "check.motor_cooling.source": (
        "0,25 ft/s para motores de 4 polegadas a partir de 3 hp, 0,5 ft/s para maiores: prática corrente, sem fonte; "
        "os dados do local"
    ),
    # tank
    "check.irradiation.compared": (
        "Irradiação de {month}, o mês que mais se afasta da climatologia da região: {given} face a {usual} kWh/m2/dia"
    ),
    "check.irradiation.compared_not": "Irradiação, face à climatologia da região",
    "check.irradiation.why": (
        "O campo é dimensionado por estes valores; uma unidade ou um mês errados não aparecem em nenhuma outra "
        "verificação."
    ),
    "check.irradiation.source": (
        "uma climatologia de 3 por 3 graus (NASA MERRA-2, 2011-2015); {limit:g}% supostos, além dos 29% encontrados "
        "em três anos típicos"
    ),
    "check.irradiation.above": (
        "o seu mês de {month} está {apart}% acima do que esta região tem: veja se os valores são kWh/m2 por dia num "
        "plano horizontal (1 kWh = 3,6 MJ), começam em janeiro e são deste local, e veja os sinais da sua latitude e "
        "longitude"
    ),
    "check.irradiation.below": (
        "o seu mês de {month} está {apart}% abaixo do que esta região tem: veja se os valores são kWh/m2 por dia num "
        "plano horizontal (não horas de sol, nem somas de um mês), começam em janeiro e são deste local"
    ),
    "check.irradiation.measure": (
        "a irradiação é uma estimativa dessa própria climatologia: meça-a ou obtenha-a antes de comprometer dinheiro "
        "(planner weather --fetch, ou uma estação próxima)"
    ),
    "check.irradiation.elsewhere": (
        "a climatologia não tem nada para este local: compare os valores com uma segunda fonte, como planner weather "
        "--fetch ou uma estação próxima"
    ),
    "check.air_temperature.compared": (
        "Ar de {month}, o mês que mais se afasta da climatologia da região: {given} face a {usual} °C a esta altitude"
    ),
    "check.air_temperature.compared_not": "Temperatura do ar, face à climatologia da região",
    "check.air_temperature.why": "Módulos e cabos são julgados a estas temperaturas.",
    "check.air_temperature.source": (
        "uma climatologia de 3 por 3 graus (ERA5, 2000-2025; contém informação modificada do Copernicus Climate "
        "Change Service), 6,5 K/km de altitude; {limit:g} K supostos, além dos 4 K encontrados em três anos típicos"
    ),
    "check.air_temperature.above": (
        "o seu mês de {month} está {apart} K mais quente do que esta região: veja se os valores são graus Celsius, "
        "médias de dia e noite, e começam em janeiro, e veja a altitude"
    ),
    "check.air_temperature.below": (
        "o seu mês de {month} está {apart} K mais frio do que esta região: veja se os valores são graus Celsius, "
        "médias de dia e noite, e começam em janeiro, e veja a altitude"
    ),
    "check.air_temperature.measure": (
        "a temperatura é uma estimativa dessa própria climatologia: meça-a ou obtenha-a antes de comprometer dinheiro"
    ),
    "check.air_temperature.elsewhere": (
        "a climatologia não tem nada para este local: compare os valores com uma segunda fonte"
    ),
    "check.days_held.compared": (
        "Necessidades do mês de maior consumo do primeiro ano que {volume} m3 guardam: {hours} horas"
    ),
    "check.days_held.compared_open": (
        "Necessidades do mês de maior consumo do primeiro ano que {volume} m3 (o volume está em aberto: o menor que "
        "convém) guardam: {hours} horas"
    ),
    "check.days_held.why": "O reservatório serve os utilizadores durante nuvens, cortes de energia e reparações.",
    "check.days_held.remedy": "um reservatório de {volume} m3, ou menos onde há uma segunda fonte de reserva",
    "check.days_held.source": (
        "as necessidades de um dia: Recommended Standards for Water Works 7.0.1, de memória; o cálculo horário diz o "
        "que basta"
    ),
    "check.busiest_hour.compared": "Volume do reservatório, face à água consumida na hora de ponta do primeiro ano",
    "check.busiest_hour.why": "Um reservatório que uma hora esvazia deixa os utilizadores sem água todos os dias.",
    "check.busiest_hour.remedy": "um reservatório de pelo menos {volume} m3",
    "check.busiest_hour.source": "os dados do local",
    "check.refill_time.compared": "Horas de bombagem que enchem {volume} m3 a {flow}, sem nenhum consumo",
    "check.refill_time.why": "Um reservatório que demora a encher fica baixo depois de cada corte de energia.",
    "check.refill_time.remedy": "um caudal de pelo menos {flow} m3/h",
    "check.refill_time.remedy_smaller": (
        "um reservatório de no máximo {volume} m3, ou um caudal de pelo menos {flow} m3/h"
    ),
    "check.refill_time.remedy_only_smaller": "um reservatório de no máximo {volume} m3",
    "check.refill_time.remedy_second": (
        "um segundo furo ou fonte: {flow} m3/h, que o encheriam a tempo, estão acima do caudal seguro de exploração "
        "deste"
    ),
    "check.refill_time.source": "prática corrente, sem fonte",
    "check.inlet_height.compared": (
        "Entrada do reservatório usada na altura manométrica, face ao terreno no fim do traçado"
    ),
    "check.inlet_height.why": (
        "Uma entrada tomada baixa de mais na altura manométrica deixa a bomba aquém no último metro."
    ),
    "check.inlet_height.look_for": (
        "faça o levantamento do local do reservatório em relação ao furo, e indique o perfil do traçado"
    ),
    "check.inlet_height.remedy": (
        "faça novo levantamento: a entrada está {ground} m ou mais acima do terreno no furo, pela altura do próprio "
        "reservatório"
    ),
    "check.inlet_height.source": "os dados do local",
    "check.outlet_head.compared": (
        "Altura da saída do reservatório acima das torneiras, antes de qualquer perda nos tubos até elas"
    ),
    "check.outlet_head.why": "Torneiras sem pressão dão um fio de água, e as distantes nada.",
    "check.outlet_head.look_for": "faça o levantamento da saída em relação à torneira mais alta",
    "check.outlet_head.remedy": "suba o reservatório {by} m, que a bomba tem então também de elevar",
    "check.outlet_head.source": (
        "7 m para um piso: manual da CPHEEO sobre abastecimento de água; 2 m é prática corrente, sem fonte"
    ),
    # water
    "check.per_person.compared_pupils": (
        "Água por pessoa e por dia do grupo {user}, o utilizador com menos para o seu tipo"
    ),
    "check.per_person.compared_below_basic": (
        "Água por pessoa e por dia do grupo {user} (menos do que o serviço básico), o utilizador com menos para o "
        "seu tipo"
    ),
    "check.per_person.compared_basic": (
        "Água por pessoa e por dia do grupo {user} (serviço básico), o utilizador com menos para o seu tipo"
    ),
    "check.per_person.compared_intermediate": (
        "Água por pessoa e por dia do grupo {user} (serviço intermédio e mais), o utilizador com menos para o seu tipo"
    ),
    "check.per_person.why": "Com água a menos as pessoas vão buscar o resto a lugares inseguros.",
    "check.per_person.remedy": "dê {volume}, ou mostre que têm outra fonte segura",
    "check.per_person.source": (
        "Manual Sphere: 15 L, escola 3 L por aluno (de memória); quantidade de água doméstica da OMS: 20 L básico, "
        "50 L intermédio"
    ),
    "check.yield_through_life.compared": (
        "Maiores necessidades do mês de maior consumo, face ao caudal seguro de exploração em 20 horas: basta até ao "
        "fim do período de análise"
    ),
    "check.yield_through_life.compared_short": (
        "Maiores necessidades do mês de maior consumo, face ao caudal seguro de exploração em 20 horas: já não basta "
        "a partir do ano {year}"
    ),
    "check.yield_through_life.compared_limit": (
        "Maiores necessidades do mês de maior consumo, face ao limite diário: basta até ao fim do período de análise"
    ),
    "check.yield_through_life.compared_limit_short": (
        "Maiores necessidades do mês de maior consumo, face ao limite diário: já não basta a partir do ano {year}"
    ),
    "check.yield_through_life.why": (
        "Um furo que não acompanha o crescimento deixa os utilizadores sem água bastante, ou é bombeado em excesso."
    ),
    "check.yield_through_life.remedy": (
        "um segundo furo ou fonte até ao ano {year}, ou limite as necessidades a {volume} m3/dia"
    ),
    "check.yield_through_life.source": (
        "os dados do local; 20 horas por dia, para deixar recuperar o nível, é prática corrente, sem fonte"
    ),
}
