"""Português das advertências: do próprio trabalho, e dos limites dos números de um estudo."""

SENTENCES: dict[str, str] = {
    "caution.local": "As normas locais e a prática de profissionais credenciados estão em primeiro lugar.",
    "caution.with_local": (
        "{caution} As normas locais e a prática de profissionais credenciados estão em primeiro lugar."
    ),
    "caution.where_listed": (
        "As normas locais e a prática de profissionais credenciados estão em primeiro lugar. Leia as advertências "
        "antes de se construir, abrir ou beber seja o que for: 'planner run' escreve as que se aplicam ao local na "
        "folha 'Método e advertências'."
    ),
    # of the work itself
    "caution.source.solar": "campo fotovoltaico",
    "caution.source.grid": "rede",
    "caution.source.generator": "gerador",
    "caution.source_any": (
        "A electricidade desta fonte, {source}, junto a um furo pode matar: ligação à terra, protecção, um comutador "
        "que não a possa juntar a outra fonte e o bloqueio com cadeado antes de se içar a bomba são trabalho de um "
        "electricista credenciado e de quem explora a fonte."
    ),
    "caution.daylight": (
        "Os módulos fotovoltaicos dão uma tensão CC perigosa sempre que há luz e não podem ser desligados de dia; "
        "seccionadores, fusíveis de fileira e polaridade são trabalho de um electricista credenciado."
    ),
    "caution.dc_arc": (
        "Nunca desligue um conector CC, retire um fusível CC ou corte um cabo CC em carga: o arco não se apaga "
        "sozinho, queima e provoca incêndios. Pare a bomba, abra o interruptor-seccionador CC e meça que não passa "
        "corrente antes de abrir um conector; um defeito à terra pode manter a corrente a passar, por isso trate-o "
        "como estando sob tensão."
    ),
    "caution.isolate": (
        "Antes de abrir uma tampa ou tocar num condutor, isole todas as fontes ({sources}), bloqueie cada uma com "
        "cadeado e etiqueta, espere o tempo que o fabricante do controlador indica para a descarga dos "
        "condensadores, e depois verifique a ausência de tensão, entre todos os condutores e à terra, com um "
        "detector ensaiado numa fonte conhecida antes e depois."
    ),
    "caution.isolate_array": (
        "Antes de abrir uma tampa ou tocar num condutor, isole todas as fontes ({sources}), bloqueie cada uma com "
        "cadeado e etiqueta, espere o tempo que o fabricante do controlador indica para a descarga dos "
        "condensadores, e depois verifique a ausência de tensão, entre todos os condutores e à terra, com um "
        "detector ensaiado numa fonte conhecida antes e depois; de dia o lado do campo fotovoltaico do seu "
        "seccionador continua sob tensão."
    ),
    "caution.wet_hands": (
        "Nunca mexa em interruptores, fichas ou no controlador com as mãos molhadas ou de pés na água."
    ),
    "caution.grid": (
        "A electricidade da rede junto a um furo pode matar: ligação à terra, um dispositivo diferencial e o "
        "bloqueio com cadeado antes de se içar a bomba são trabalho de um electricista credenciado e da empresa "
        "distribuidora."
    ),
    "caution.residual_current": (
        "O tipo do dispositivo diferencial tem de convir a um accionamento electrónico, cuja corrente de fuga CC "
        "lisa cega os tipos AC e A: tipo B (IEC 62423) onde o fabricante do accionamento ou a norma local o exija, "
        "sem dispositivo de outro tipo a montante no mesmo circuito."
    ),
    "caution.exhaust": (
        "O escape de um gerador mata em espaços fechados e semifechados: ponha-o a funcionar ao ar livre, longe de "
        "portas, de janelas e da boca do furo. Deixe-o arrefecer antes de o reabastecer, mantenha as chamas "
        "afastadas, e guarde o combustível onde um derrame não possa chegar ao furo."
    ),
    "caution.backfeed": (
        "Um gerador nunca pode alimentar em retorno a rede ou outra fonte, o que mata quem trabalha na linha: "
        "ligue-o através de um comutador que não possa juntar as duas, nunca por uma ficha numa tomada."
    ),
    "caution.lightning": (
        "O raio desce pelos cabos até ao furo: interligue e ligue à terra controlador, tubagem e revestimento, "
        "instale protecção contra sobretensões no controlador e na cabeça do furo, segundo as regras locais de "
        "instalações eléctricas, e pare o trabalho quando ouvir trovões."
    ),
    "caution.lightning_array": (
        "O raio desce pelos cabos até ao furo: interligue e ligue à terra molduras dos módulos, controlador, tubagem "
        "e revestimento, instale protecção contra sobretensões no campo fotovoltaico, no controlador e na cabeça do "
        "furo, segundo as regras locais de instalações eléctricas, e pare o trabalho quando ouvir trovões."
    ),
    "caution.lifting": (
        "Uma bomba com a tubagem cheia pode pesar mais do que uma equipa consegue segurar: ice-a com tripé ou grua, "
        "abraçadeiras e um cabo de segurança, todos dimensionados para a carga, sem ninguém por baixo."
    ),
    "caution.overhead_lines": (
        "Veja se há linhas aéreas antes de levantar um tripé, uma grua, um mastro ou um tubo comprido, e mantenha a "
        "distância que a empresa distribuidora exige: uma linha pode matar sem ser tocada."
    ),
    "caution.confined_space": (
        "Nunca desça sozinho a um poço escavado nem entre sozinho numa câmara de bomba ou num reservatório: o ar "
        "pode ter falta de oxigénio ou conter gás. Analise o ar, ventile, use um arnês com uma corda até alguém no "
        "exterior, mantenha os motores afastados, e nunca entre atrás de quem desmaiou; chame o socorro."
    ),
    "caution.falls": (
        "As pessoas caem de telhados, escadas e torres de reservatórios: guarda-corpos ou um arnês numa ancoragem "
        "sólida, escadas amarradas, nenhum trabalho ali com vento, com chuva ou sozinho. Telhado e torre têm de ser "
        "projectados para a sua carga; cada m3 de água pesa uma tonelada."
    ),
    "caution.children": (
        "As crianças afogam-se em reservatórios abertos e caem em furos abertos: mantenha reservatório, câmaras e "
        "furo tapados e fechados à chave, e vede reservatório e controlador."
    ),
    "caution.children_array": (
        "As crianças afogam-se em reservatórios abertos e caem em furos abertos: mantenha reservatório, câmaras e "
        "furo tapados e fechados à chave, e vede reservatório, campo fotovoltaico e controlador."
    ),
    "caution.trench": (
        "As paredes das valas desabam sem aviso e soterram pessoas: escore todas as valas em que alguém entre, ou "
        "dê-lhes talude, como a norma local exige; mantenha terras e veículos longe do bordo, e localize cabos e "
        "tubos enterrados antes de escavar."
    ),
    "caution.pressure_test": (
        "Ensaie a tubagem com água, nunca com ar, que armazena energia bastante para matar quando uma junta cede: "
        "encha devagar, purgue o ar nos pontos altos, depois suba a pressão por patamares e mantenha as pessoas "
        "afastadas."
    ),
    "caution.drinking": (
        "Primeiro limpe, desinfecte e lave furo, tubagens e reservatório, depois colha amostras: mande analisar "
        "germes, arsénio, fluoreto, nitrato e salinidade antes de alguém beber a água. Nada do que aqui se calcula "
        "diz que ela é própria para beber."
    ),
    "caution.not_drinking": (
        "Primeiro limpe, desinfecte e lave furo, tubagens e reservatório, depois colha amostras: analise a água para "
        "o que o seu uso exige; ninguém a deve beber sem análise."
    ),
    "caution.chlorine": (
        "O cloro queima a pele, os olhos e os pulmões: luvas, óculos de protecção e ar livre; deite-o na água, nunca "
        "água sobre ele; nunca o misture com ácido, combustível ou outro produto de limpeza; não deixe ninguém "
        "beber, e desvie a água de animais e de cursos de água, até ter sido toda lavada."
    ),
    "caution.permit": "Captar água exige quase sempre uma licença com um volume diário; tenha-a antes de bombear.",
    # of the limits of a study's numbers
    "caution.altitude": "A altitude não foi indicada; {altitude} m vêm da grelha mundial da pvlib.",
    "caution.hours_a_day": (
        "No último ano a bomba teria de trabalhar {hours} horas por dia no seu caudal de funcionamento de {flow} "
        "m3/h; as necessidades ultrapassam a bomba ou o furo."
    ),
    "caution.safe_yield": (
        "A bomba poderia dar mais do que o caudal seguro de exploração do furo, {flow} m3/h; a sua velocidade é "
        "limitada a esse caudal."
    ),
    "caution.dc_window": (
        "Na opção {option} a janela CC do controlador mantém o campo fotovoltaico fora do seu melhor ponto em "
        "{hours} horas por ano; reveja o número de módulos em série."
    ),
    "caution.source_carbon": (
        "Não foi indicado nenhum valor de dióxido de carbono para esta fonte: {source}. As suas emissões não são "
        "contadas."
    ),
    "caution.lowest_level": (
        "Na opção {option} o interruptor de bóia foi regulado para o nível mais baixo ensaiado, {level}% do "
        "reservatório; um mais alto guarda mais reserva para uma avaria."
    ),
    "caution.simulated": (
        "Cada ano de vida é simulado hora a hora, a partir do que o ano anterior deixa no reservatório, com bomba, "
        "furo e módulos envelhecidos até então; a qualidade da água não faz parte da simulação."
    ),
    "caution.summer_time": (
        "As horas são de hora legal de inverno todo o ano; no verão os relógios de {zone} andam uma hora adiantados, "
        "pelo que consumo, períodos da tarifa e horas permitidas ficam então uma hora atrasados."
    ),
    "caution.unpriced": "Falta o preço do seguinte: {names}; o custo de uma opção que precise disso está incompleto.",
    "caution.free": "Contado como já existente e pago, por ter sido indicado um preço de 0: {names}.",
    "caution.under_budgeted": (
        "A opção {option} está orçada em {cost} dólares dos EUA de 2011 por pessoa e por ano para explorar, apoiar e "
        "manter renovada, abaixo dos {low} a {high} encontrados em sistemas assim (IRC WASHCost, cost benchmarks, "
        "2012, em segunda mão): procure o que falta, como salários, reparações, análises da água ou apoio, antes de "
        "a prometer aos utilizadores."
    ),
    "caution.loan": (
        "O juro do empréstimo, {rate}%, é nominal, os preços são constantes e nenhuma inflação foi indicada, pelo "
        "que o juro conta como se fosse acima da inflação e o custo do dono sai demasiado alto: indique a inflação "
        "(0 só onde não se espera nenhuma)."
    ),
    "caution.turned_away": (
        "Um plano do campo fotovoltaico está voltado para o pólo (azimute {azimuth} à latitude {latitude}); neste "
        "hemisfério os módulos fotovoltaicos costumam estar voltados para {usual} graus."
    ),
}
