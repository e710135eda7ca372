using LogBook.Domain.Languages;

namespace LogBook.Application.Rescue;

/// <summary>What is wrong with a rescue file.</summary>
public static class RescueFileTexts
{
    public static readonly Text Strange = new(
        "This is not a rescue file of a tablet. Nothing was taken in. Its name begins with logbook-rescue and ends with .json.",
        "No es un archivo de rescate de una tableta. No se recibió nada. Su nombre empieza por logbook-rescue y termina en .json.",
        "Isto não é um arquivo de resgate de um tablet. Nada foi recebido. O nome começa com logbook-rescue e termina em .json.");

    public static readonly Text Damaged = new(
        "This rescue file is cut off or was changed on its way. Nothing was taken in. Copy it again from the tablet, or write it there once more.",
        "Este archivo de rescate está cortado o cambió en el camino. No se recibió nada. Cópielo de nuevo de la tableta o escríbalo allí otra vez.",
        "Este arquivo de resgate está cortado ou mudou no caminho. Nada foi recebido. Copie-o de novo do tablet ou escreva-o lá outra vez.");

    public static readonly Text Newer = new(
        "This rescue file was written by a newer LogBook than this server. Nothing was taken in. Bring the server up to date first.",
        "Este archivo de rescate lo escribió un LogBook más nuevo que este servidor. No se recibió nada. Actualice antes el servidor.",
        "Este arquivo de resgate foi escrito por um LogBook mais novo que este servidor. Nada foi recebido. Atualize antes o servidor.");

    public static readonly Text Exchange = new(
        "This is a file in the exchange format with more than visits in it. Nothing was taken in. It comes in through the programming interface or the command line.",
        "Es un archivo en el formato de intercambio con más que visitas. No se recibió nada. Entra por la interfaz de programación o la línea de comandos.",
        "Este é um arquivo no formato de intercâmbio com mais que visitas. Nada foi recebido. Ele entra pela interface de programação ou pela linha de comando.");

    public static readonly Text TooLarge = new(
        "The file is larger than {0} MB. Nothing was taken in. A tablet writes no file of that size.",
        "El archivo supera {0} MB. No se recibió nada. Una tableta no escribe archivos de ese tamaño.",
        "O arquivo passa de {0} MB. Nada foi recebido. Um tablet não escreve arquivos desse tamanho.");
}
