using LogBook.Domain.Languages;

namespace LogBook.Web.Features.Capture;

/// <summary>Words about the form that works without signal; its own words are in LogBook.Capture.</summary>
public static class CaptureTexts
{
    public static readonly Text Open = new("Work without signal", "Trabajar sin señal", "Trabalhar sem sinal");

    public static readonly Text HelpTitle = new("Work without signal", "Trabajar sin señal", "Trabalhar sem sinal");

    public static readonly Text HelpRegister = new(
        "Open \"Work without signal\" on the tablet once while there is signal, and register it with a name and a PIN of your own. It then holds your round first, and after it all other sites, so that you can take over a colleague's. Each person registers on it once; changing person is a PIN away. Install the page on the home screen: browsers clear a store that nobody installed sooner.",
        "Abra «Trabajar sin señal» en la tableta una vez con señal y regístrela con un nombre y un PIN suyo. Desde entonces guarda primero su ronda y después todos los demás sitios, para que pueda asumir la de un colega. Cada persona se registra una vez; cambiar de persona es cuestión de un PIN. Instale la página en la pantalla de inicio: los navegadores borran antes lo que nadie instaló.",
        "Abra \"Trabalhar sem sinal\" no tablet uma vez com sinal e registre-o com um nome e um PIN seu. Desde então ele guarda primeiro sua ronda e depois todos os outros locais, para que você possa assumir a de um colega. Cada pessoa se registra uma vez; trocar de pessoa é questão de um PIN. Instale a página na tela inicial: os navegadores apagam antes o que ninguém instalou.");

    public static readonly Text HelpQueue = new(
        "A closed visit stands under \"Waiting to send\" as on this device, then on the server, then e-mailed. It never says more than what is done: it leaves the device only when the server has confirmed these very words and every photo. It sends by itself when the signal is back, also if an answer was lost; nothing arrives twice. What was sent stays readable here for 7 days.",
        "Una visita cerrada aparece en «Por enviar» como en este dispositivo, luego en el servidor, luego enviada por correo. Nunca dice más de lo hecho: sale del dispositivo solo cuando el servidor ha confirmado exactamente ese texto y cada foto. Se envía sola cuando vuelve la señal, también si se perdió una respuesta; nada llega dos veces. Lo enviado se puede leer aquí durante 7 días.",
        "Uma visita fechada aparece em \"A enviar\" como neste aparelho, depois no servidor, depois enviada por e-mail. Nunca diz mais do que foi feito: ela sai do aparelho só quando o servidor confirmou exatamente esse texto e cada foto. Envia-se sozinha quando o sinal volta, também se uma resposta se perdeu; nada chega duas vezes. O que foi enviado fica legível aqui por 7 dias.");

    public static readonly Text HelpLost = new(
        "A tablet is lost: revoke it under Access tokens, where it stands under its name; a supervisor sees those of all. The PIN holds up a finder for a while; it is no vault. A PIN that is forgotten is replaced with signal: \"I forgot the PIN\" asks a supervisor, who makes sure who asks and releases it under Access tokens for an hour; the drafts stay. Visits that were closed send without any PIN. A tablet that cannot send any more writes closed visits, drafts and photos into a rescue file, which a supervisor takes in under Access tokens, Rescue file of a tablet; drafts of somebody who has left go along sealed, and a supervisor opens them there with a reason.",
        "Se perdió una tableta: revóquela en Claves de acceso, donde figura con su nombre; un supervisor ve las de todos. El PIN detiene un tiempo a quien la encuentre; no es una caja fuerte. Un PIN olvidado se cambia con señal: «Olvidé el PIN» lo pide a un supervisor, que comprueba quién pide y lo libera en Claves de acceso durante una hora; los borradores se conservan. Las visitas cerradas se envían sin PIN. Una tableta que ya no puede enviar escribe visitas cerradas, borradores y fotos en un archivo de rescate, que un supervisor recibe en Claves de acceso, Archivo de rescate de una tableta; los borradores de alguien que se fue van sellados y un supervisor los abre allí con un motivo.",
        "Um tablet se perdeu: revogue-o em Chaves de acesso, onde está com seu nome; um supervisor vê os de todos. O PIN detém por um tempo quem o achar; não é um cofre. Um PIN esquecido se troca com sinal: \"Esqueci o PIN\" o pede a um supervisor, que confere quem pede e o libera em Chaves de acesso por uma hora; os rascunhos ficam. Visitas fechadas são enviadas sem PIN. Um tablet que não consegue mais enviar escreve visitas fechadas, rascunhos e fotos em um arquivo de resgate, que um supervisor recebe em Chaves de acesso, Arquivo de resgate de um tablet; rascunhos de quem saiu vão selados, e um supervisor os abre ali com um motivo.");
}
