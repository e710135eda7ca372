using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Shelf;

/// <summary>Words of the shelf, the reorder list and the make-up watch.</summary>
public static class ShelfTexts
{
    public static readonly Text Title = new("Shelf", "Existencias", "Estoque");
    public static readonly Text Order = new("Reorder list", "Lista de pedidos", "Lista de pedidos");
    public static readonly Text MakeUp = new("Make-up watch", "Vigilancia de la reposición", "Vigilância da reposição");
    public static readonly Text Intro = new(
        "Every drum of every site: what was left when it was last read, use a day, and the days on which it runs out about. The range is that in which the true day lies with 95 % confidence, if use goes on as in the last weeks.",
        "Todos los bidones de todos los sitios: lo que quedaba en la última lectura, el uso por día y los días hacia los que se agota. El rango contiene el día verdadero con un 95 % de confianza si el uso sigue como en las últimas semanas.",
        "Todas as bombonas de todos os locais: o que restava na última leitura, o uso por dia e os dias por volta dos quais acaba. A faixa contém o dia verdadeiro com 95 % de confiança se o uso continuar como nas últimas semanas.");

    public static readonly Text Empty = new("No drum on file", "Ningún bidón en la ficha", "Nenhuma bombona no cadastro");
    public static readonly Text EmptyMore = new("Drums belong to a system and are kept in the set-up.", "Los bidones pertenecen a un sistema y se llevan en la configuración.", "As bombonas pertencem a um sistema e ficam na configuração.");
    public static readonly Text Product = new("Product", "Producto", "Produto");
    public static readonly Text Drum = new("Drum", "Bidón", "Bombona");
    public static readonly Text Left = new("Left when read", "Quedaba al leer", "Restava na leitura");
    public static readonly Text LeftNow = new("Left now, about", "Queda ahora, unos", "Resta agora, cerca de");
    public static readonly Text ReadOn = new("read {0}", "leído el {0}", "lido em {0}");
    public static readonly Text NeverRead = new("no level that tells", "sin nivel que sirva", "sem nível que sirva");
    public static readonly Text Use = new("Use a day", "Uso por día", "Uso por dia");
    public static readonly Text RunsOut = new("Runs out about", "Se agota hacia", "Acaba por volta de");
    public static readonly Text Range = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    public static readonly Text NextVisits = new("Next visits", "Próximas visitas", "Próximas visitas");
    public static readonly Text NoInterval = new("no interval agreed; one of {0} is taken", "sin intervalo acordado; se toma uno de {0}", "sem intervalo combinado; toma-se um de {0}");
    public static readonly Text Suggested = new("Suggested order", "Pedido sugerido", "Pedido sugerido");
    public static readonly Text Nothing = new("none", "nada", "nada");
    public static readonly Text MoreThanFits = new("more than the drum holds ({0})", "más de lo que cabe ({0})", "mais do que cabe ({0})");
    public static readonly Text OrderBy = new("order by {0}", "pedir antes del {0}", "pedir até {0}");
    public static readonly Text ByProduct = new("By product", "Por producto", "Por produto");
    public static readonly Text ByRoute = new("By route", "Por ruta", "Por rota");
    public static readonly Text Together = new("{0}: {1} in all", "{0}: {1} en total", "{0}: {1} no total");
    public static readonly Text Cut = new(
        "The first {0} of {1} drums stand here; the totals count all of them, and the table as a file holds all.",
        "Aquí están los primeros {0} de {1} bidones; los totales cuentan todos y la tabla como archivo los contiene todos.",
        "Aqui estão as primeiras {0} de {1} bombonas; os totais contam todas e a tabela como arquivo contém todas.");

    public static readonly Text NoOne = new("on nobody's round", "en la ronda de nadie", "na ronda de ninguém");
    public static readonly Text Print = new("Print", "Imprimir", "Imprimir");
    public static readonly Text Download = new("Table as a file (CSV)", "Tabla como archivo (CSV)", "Tabela como arquivo (CSV)");
    public static readonly Text NothingToOrder = new("Nothing to order before the visits after next", "Nada que pedir antes de las visitas siguientes", "Nada a pedir antes das visitas seguintes");
    public static readonly Text How = new("How was this worked out?", "¿Cómo se calculó?", "Como isto foi calculado?");
    public static readonly Text HowOrder = new(
        "Suggested = use a day × days from the last reading until the visit after next − what the pump could draw then (heel not counted, spare on site counted), with the upper end of its uncertainty (k = 2), in whole litres. The next visit is the last one plus the agreed interval; where none is agreed, four weeks are taken. Where delivery takes longer than that, it must last until an order made at the next visit has come. Use a day: from the shortest stretch of levels and deliveries that stands out of the level's uncertainty, or from the doses planned. Common practice, no source for the choice of the visit after next. A person decides: deliveries on the way, stops and seasons are not known here.",
        "Sugerido = uso por día × días desde la última lectura hasta la visita siguiente a la próxima − lo que la bomba podía aspirar entonces (sin el fondo, con la reserva en el sitio), con el extremo superior de su incertidumbre (k = 2), en litros enteros. La próxima visita es la última más el intervalo acordado; sin acuerdo se toman cuatro semanas. Si la entrega tarda más, debe durar hasta que llegue un pedido hecho en la próxima visita. Uso por día: del tramo más corto de niveles y entregas que sobresale de la incertidumbre del nivel, o de las dosis previstas. Práctica común, sin fuente para elegir la visita siguiente. Decide una persona: aquí no se conocen entregas en camino, paradas ni temporadas.",
        "Sugerido = uso por dia × dias da última leitura até a visita depois da próxima − o que a bomba podia aspirar então (sem o fundo, com a reserva no local), com a ponta superior da incerteza (k = 2), em litros inteiros. A próxima visita é a última mais o intervalo combinado; sem acordo tomam-se quatro semanas. Se a entrega demora mais, deve durar até chegar um pedido feito na próxima visita. Uso por dia: do trecho mais curto de níveis e entregas que se destaca da incerteza do nível, ou das doses previstas. Prática comum, sem fonte para a escolha da visita seguinte. Uma pessoa decide: entregas a caminho, paradas e temporadas não são conhecidas aqui.");

    public static readonly Text Delivery = new(
        "On delivery: read the label, match product and tank, have a second pair of eyes, scan.",
        "En la entrega: lea la etiqueta, compare producto y depósito, pida una segunda mirada, escanee.",
        "Na entrega: leia o rótulo, compare produto e tanque, peça um segundo par de olhos, escaneie.");

    public static readonly Text MakeUpIntro = new(
        "Conductivity, hardness and chloride of the make-up of every system against its own past. Cycles and set point rest on it. A single reading may come from the wrong tap.",
        "Conductividad, dureza y cloruro de la reposición de cada sistema frente a su propio pasado. Los ciclos y la consigna se apoyan en ello. Una sola lectura puede venir del grifo equivocado.",
        "Condutividade, dureza e cloreto da reposição de cada sistema contra o próprio passado. Os ciclos e o ponto de ajuste se apoiam nisso. Uma única leitura pode vir da torneira errada.");

    public static readonly Text NoMakeUp = new("No make-up can be compared yet", "Aún no se puede comparar ninguna reposición", "Nenhuma reposição pode ser comparada ainda");
    public static readonly Text NoMakeUpMore = new("It takes five readings of the make-up before there is an own past.", "Hacen falta cinco lecturas de la reposición para tener un pasado propio.", "São precisas cinco leituras da reposição para haver um passado próprio.");
    public static readonly Text Now = new("Newest", "Última", "Última");
    public static readonly Text Usual = new("Usually", "Suele ser", "Costuma ser");
    public static readonly Text Spread = new("Own spread", "Dispersión propia", "Dispersão própria");
    public static readonly Text Against = new("Against its own past", "Frente a su pasado", "Contra o próprio passado");
    public static readonly Text Before = new("The ones before", "Las anteriores", "As anteriores");
    public static readonly Text Trend = new("Trend", "Tendencia", "Tendência");
    public static readonly Text HowMakeUp = new(
        "Newest reading against the median of the system's own last twelve readings that were not themselves shifted; own spread: their standard deviation, at least the uncertainty of one reading. The finding “Make-up changed” fires beyond {0} and {1} times the spread, and needs a second visit or a second witness ({2}).",
        "Última lectura frente a la mediana de las últimas doce lecturas propias no desplazadas; dispersión propia: su desviación estándar, al menos la incertidumbre de una lectura. El hallazgo «Reposición cambiada» surge más allá de {0} y de {1} veces la dispersión, y necesita una segunda visita o un segundo testigo ({2}).",
        "Última leitura contra a mediana das doze últimas leituras próprias não deslocadas; dispersão própria: o desvio padrão, no mínimo a incerteza de uma leitura. A constatação “Reposição mudou” surge além de {0} e de {1} vezes a dispersão, e precisa de uma segunda visita ou de uma segunda testemunha ({2}).");

    private static readonly Dictionary<StockStanding, Text> Standings = new()
    {
        [StockStanding.Empty] = new("Empty", "Vacío", "Vazia"),
        [StockStanding.BeforeNext] = new("Likely empty before the next visit", "Probablemente vacío antes de la próxima visita", "Provavelmente vazia antes da próxima visita"),
        [StockStanding.PerhapsBeforeNext] = new("May be empty before the next visit", "Puede vaciarse antes de la próxima visita", "Pode esvaziar antes da próxima visita"),
        [StockStanding.BeforeSecond] = new("May be empty before the visit after next", "Puede vaciarse antes de la visita siguiente", "Pode esvaziar antes da visita seguinte"),
        [StockStanding.Unknown] = new("Unknown", "No se sabe", "Não se sabe"),
        [StockStanding.Lasts] = new("Lasts longer", "Dura más", "Dura mais"),
    };

    public static Text NameOf(StockStanding standing) => Standings[standing];
}
