// Words of the shell: English, Spanish, Portuguese.
const words = {
  onDevice: ["On this device", "En este dispositivo", "Neste aparelho"],
  onServer: ["On the server", "En el servidor", "No servidor"],
  mailed: ["On the server, e-mailed", "En el servidor, enviada por correo", "No servidor, enviada por e-mail"],
  refused: ["Came back: to be corrected", "Devuelta: hay que corregir", "Voltou: a corrigir"],
  conflict: ["Stands twice on the server: a supervisor settles it", "Está dos veces en el servidor: decide un supervisor", "Está duas vezes no servidor: um supervisor decide"],
  noSignal: ["No signal; it is tried again by itself", "Sin señal; se intenta de nuevo por sí solo", "Sem sinal; tenta de novo sozinho"],
  server: ["The server does not answer well ({0}); it is tried again", "El servidor no responde bien ({0}); se intenta de nuevo", "O servidor não responde bem ({0}); tenta de novo"],
  signedOut: ["The server does not know this tablet any more: register again", "El servidor ya no reconoce esta tableta: regístrela de nuevo", "O servidor não reconhece mais este tablet: registre-o de novo"],
  receipt: ["The receipt does not fit; the visit stays here", "El recibo no corresponde; la visita sigue aquí", "O recibo não confere; a visita fica aqui"],
  photo: ["A photo is still to be sent", "Falta enviar una foto", "Falta enviar uma foto"],
  photoMissing: ["A photo is not on this device any more", "Una foto ya no está en este dispositivo", "Uma foto não está mais neste aparelho"],
  waiting: ["Waiting to send", "Por enviar", "A enviar"],
  sent: ["Sent in the last 7 days", "Enviadas en los últimos 7 días", "Enviadas nos últimos 7 dias"],
  nothingWaits: ["Nothing waits to be sent.", "No hay nada por enviar.", "Não há nada a enviar."],
  standing: ["{0} waiting to send", "{0} por enviar", "{0} a enviar"],
  allSent: ["All is sent", "Todo enviado", "Tudo enviado"],
  offline: ["No signal", "Sin señal", "Sem sinal"],
  sendNow: ["Send now", "Enviar ahora", "Enviar agora"],
  closedAt: ["Closed {0}", "Cerrada {0}", "Fechada {0}"],
  drafts: ["Begun on this tablet", "Empezadas en esta tableta", "Começadas neste tablet"],
  goOn: ["Go on", "Continuar", "Continuar"],
  lastKept: ["Kept {0}", "Guardado {0}", "Guardado {0}"],
  throwAway: ["Throw away", "Descartar", "Descartar"],
  thrownAway: ["Thrown away.", "Descartado.", "Descartado."],
  undo: ["Undo", "Deshacer", "Desfazer"],
  of: ["of {0}", "de {0}", "de {0}"],
  round: ["Today's round", "La ronda de hoy", "A rota de hoje"],
  otherSites: ["All other sites", "Todos los demás sitios", "Todos os outros locais"],
  noRound: ["The round is not on this tablet yet.", "La ronda todavía no está en esta tableta.", "A rota ainda não está neste tablet."],
  roundAt: ["Brought {0}", "Traída {0}", "Trazida {0}"],
  bring: ["Bring the round", "Traer la ronda", "Trazer a rota"],
  bringing: ["The round is being brought …", "Se está trayendo la ronda …", "A rota está sendo trazida …"],
  bringFailed: ["The round could not be brought. What is here stays.", "No se pudo traer la ronda. Lo que hay aquí se conserva.", "Não foi possível trazer a rota. O que está aqui fica."],
  lastVisit: ["Last visit: {0}", "Última visita: {0}", "Última visita: {0}"],
  since: ["Since you were here: {0}", "Desde su última visita: {0}", "Desde sua última visita: {0}"],
  start: ["Start the visit", "Empezar la visita", "Começar a visita"],
  search: ["Find a site", "Buscar un sitio", "Procurar um local"],
  register: ["Register this tablet", "Registrar esta tableta", "Registrar este tablet"],
  registerWhy: [
    "The tablet keeps your round and your visits, so that you can work without signal. It is registered once for each person, with signal.",
    "La tableta guarda su ronda y sus visitas, para trabajar sin señal. Se registra una vez por persona, con señal.",
    "O tablet guarda sua rota e suas visitas, para trabalhar sem sinal. Registra-se uma vez por pessoa, com sinal."],
  signInFirst: ["Sign in first; you come back here.", "Primero inicie sesión; volverá aquí.", "Entre primeiro; você volta para cá."],
  signIn: ["Sign in", "Iniciar sesión", "Entrar"],
  tablet: ["Name of this tablet", "Nombre de esta tableta", "Nome deste tablet"],
  tabletHint: ["As it is called among you, so that it can be locked out when it is lost", "Como la llaman ustedes, para poder bloquearla si se pierde", "Como vocês o chamam, para poder bloqueá-lo se for perdido"],
  pin: ["PIN, 6 to 12 digits", "PIN, de 6 a 12 cifras", "PIN, de 6 a 12 dígitos"],
  pinAgain: ["The PIN once more", "El PIN otra vez", "O PIN mais uma vez"],
  pinHint: ["It opens your drafts on this tablet. Nobody can bring it back.", "Abre sus borradores en esta tableta. Nadie puede recuperarlo.", "Abre seus rascunhos neste tablet. Ninguém pode recuperá-lo."],
  pinShort: ["The PIN has {0} characters: 6 to 12 digits are expected.", "El PIN tiene {0} caracteres: se esperan de 6 a 12 cifras.", "O PIN tem {0} caracteres: esperam-se de 6 a 12 dígitos."],
  pinDiffers: ["The two PINs differ.", "Los dos PIN no coinciden.", "Os dois PINs não são iguais."],
  pinWrong: ["This is not the PIN.", "No es el PIN.", "Não é o PIN."],
  pinOther: ["{0} has a PIN on this tablet already: enter that one.", "{0} ya tiene un PIN en esta tableta: escriba ese.", "{0} já tem um PIN neste tablet: digite esse."],
  pinWait: ["Too many tries. Wait {0} s.", "Demasiados intentos. Espere {0} s.", "Tentativas demais. Espere {0} s."],
  tabletMissing: ["The name of the tablet is missing: 1 to 100 characters.", "Falta el nombre de la tableta: de 1 a 100 caracteres.", "Falta o nome do tablet: de 1 a 100 caracteres."],
  refusedRegister: ["The tablet was not registered: {0}", "La tableta no se registró: {0}", "O tablet não foi registrado: {0}"],
  needsSignal: ["This needs signal.", "Para esto hace falta señal.", "Isto precisa de sinal."],
  who: ["Who is at the tablet?", "¿Quién está en la tableta?", "Quem está no tablet?"],
  someoneElse: ["Register another person", "Registrar a otra persona", "Registrar outra pessoa"],
  unlock: ["Open", "Abrir", "Abrir"],
  cancel: ["Back", "Volver", "Voltar"],
  changePerson: ["Change person", "Cambiar de persona", "Trocar de pessoa"],
  me: ["At the tablet: {0}", "En la tableta: {0}", "No tablet: {0}"],
  locked: ["Locked: {0}", "Bloqueada: {0}", "Bloqueado: {0}"],
  back: ["To the round", "A la ronda", "Para a rota"],
  keptHere: ["Kept on this device, {0}", "Guardado en este dispositivo, {0}", "Guardado neste aparelho, {0}"],
  loadingForm: ["The form is being opened …", "Se está abriendo el formulario …", "O formulário está sendo aberto …"],
  formFailed: ["The form could not be opened on this tablet. Nothing is lost; load this page again, with signal once.", "No se pudo abrir el formulario en esta tableta. No se pierde nada; cargue esta página otra vez, una vez con señal.", "Não foi possível abrir o formulário neste tablet. Nada se perde; carregue esta página de novo, uma vez com sinal."],
  newVersion: ["A new version is here.", "Hay una versión nueva.", "Há uma versão nova."],
  load: ["Load it", "Cargarla", "Carregar"],
  persist: ["The browser may clear this store when the device is full.", "El navegador puede borrar este almacén si el dispositivo se llena.", "O navegador pode apagar este armazém se o aparelho ficar cheio."],
  persistAsk: ["Ask to keep it", "Pedir que se conserve", "Pedir que o guarde"],
  clockOff: ["The clock of this tablet is {0} off; times are taken from the server's.", "El reloj de esta tableta está {0} desfasado; las horas se toman del servidor.", "O relógio deste tablet está {0} fora; as horas são tomadas do servidor."],
  rescue: ["Rescue file", "Archivo de rescate", "Arquivo de resgate"],
  rescueWhy: ["Writes what waits on this tablet into a file that a supervisor can import. It is not locked: keep it as you keep the visits.", "Escribe lo que espera en esta tableta en un archivo que un supervisor puede importar. No va cerrado: cuídelo como las visitas.", "Escreve o que espera neste tablet em um arquivo que um supervisor pode importar. Não vai trancado: guarde-o como as visitas."],
  language: ["Language", "Idioma", "Idioma"],
  more: ["This tablet", "Esta tableta", "Este tablet"],
  storeFailed: ["This browser does not let LogBook keep anything (a private window?). Do not enter a visit here.", "Este navegador no deja que LogBook guarde nada (¿ventana privada?). No anote una visita aquí.", "Este navegador não deixa o LogBook guardar nada (janela privada?). Não anote uma visita aqui."],
  desk: ["The pages on the server", "Las páginas en el servidor", "As páginas no servidor"],
};

export const codes = ["en", "es", "pt"];
export const names = { en: "English", es: "Español", pt: "Português" };
const locales = { en: "en-GB", es: "es-MX", pt: "pt-BR" };
let language = codes.find((code) => navigator.language.toLowerCase().startsWith(code)) ?? "en";

export const speak = (code) => { if (codes.includes(code)) { language = code; document.documentElement.lang = code; } };
export const spoken = () => language;
export const say = (key, ...values) => words[key][codes.indexOf(language)].replace(/\{(\d)\}/g, (_, at) => values[at]);
export const time = (moment) => new Intl.DateTimeFormat(locales[language], { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" }).format(moment);
export const clock = (moment) => new Intl.DateTimeFormat(locales[language], { hour: "2-digit", minute: "2-digit", second: "2-digit" }).format(moment);
export const duration = (ms) => {
  const minutes = Math.round(Math.abs(ms) / 60_000);
  return minutes < 120 ? minutes + " min" : minutes < 2880 ? Math.round(minutes / 60) + " h" : Math.round(minutes / 1440) + " d";
};
