using LogBook.Domain.Languages;

namespace LogBook.Web.Features.TakeOver;

/// <summary>Words of the take-over pack.</summary>
public static class TakeOverPageTexts
{
    public static readonly Text Title = new("Take-over pack", "Paquete de relevo", "Pacote de passagem");
    public static readonly Text Intro = new(
        "For whoever takes this site over: how to get in, whom to ask, what stands there, and what happened in the last twelve months. Nothing here replaces the site's own rules, permits and labels.",
        "Para quien se hace cargo de este sitio: cómo entrar, a quién preguntar, qué hay allí y qué pasó en los últimos doce meses. Nada de esto sustituye las normas, permisos y etiquetas del propio sitio.",
        "Para quem assume este local: como entrar, a quem perguntar, o que há ali e o que aconteceu nos últimos doze meses. Nada disto substitui as normas, permissões e rótulos do próprio local.");
    public static readonly Text Getting = new("Getting there and in", "Cómo llegar y entrar", "Como chegar e entrar");
    public static readonly Text NoAccess = new(
        "Nothing on file about keys, hours or whom to ask. Ask the supervisor before you go.",
        "No hay nada registrado sobre llaves, horarios o a quién preguntar. Consulte al supervisor antes de ir.",
        "Nada registrado sobre chaves, horários ou a quem perguntar. Consulte o supervisor antes de ir.");
    public static readonly Text NoAddress = new("no address on file", "sin dirección registrada", "sem endereço registrado");
    public static readonly Text Now = new("Now at the site", "Ahora en el sitio", "Agora no local");
    public static readonly Text Until = new("Until now on the round of", "Hasta ahora en la ronda de", "Até agora na ronda de");
    public static readonly Text What = new("What stands there", "Qué hay allí", "O que há ali");
    public static readonly Text Outputs = new("Outputs", "Salidas", "Saídas");
    public static readonly Text Drums = new("Drums", "Bidones", "Bombonas");
    public static readonly Text Meters = new("Meters", "Contadores", "Medidores");
    public static readonly Text Rules = new("Rules", "Normas", "Normas");
    public static readonly Text Points = new("Sample points", "Puntos de muestra", "Pontos de amostra");
    public static readonly Text Notes = new("What those who know it wrote down", "Lo que anotaron quienes lo conocen", "O que anotou quem conhece o local");
    public static readonly Text NoNotes = new("Nobody wrote a note or an observation in this time.", "Nadie escribió notas ni observaciones en este tiempo.", "Ninguém escreveu notas nem observações neste período.");
    public static readonly Text Story = new("What happened since {0}", "Qué pasó desde el {0}", "O que aconteceu desde {0}");
    public static readonly Text NoStory = new("Nothing is recorded in this time.", "No hay nada registrado en este tiempo.", "Nada registrado neste período.");
    public static readonly Text Untold = new("{0} older lines are in the site history.", "{0} líneas más antiguas están en el historial del sitio.", "{0} linhas mais antigas estão no histórico do local.");
    public static readonly Text Photos = new("Newest photos", "Fotos más recientes", "Fotos mais recentes");
    public static readonly Text NoPhotos = new("No photo has come in in this time.", "No ha llegado ninguna foto en este tiempo.", "Nenhuma foto chegou neste período.");
}
