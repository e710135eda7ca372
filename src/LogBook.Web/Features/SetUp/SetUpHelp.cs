using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;

namespace LogBook.Web.Features.SetUp;

/// <summary>Help of the set-up pages.</summary>
public sealed class SetUpHelp : IHelpSource
{
    /// <inheritdoc />
    public IReadOnlyList<HelpPage> Pages { get; } =
    [
        new(
            "setup",
            SetUpTexts.Title,
            [
                new(
                    "Everything that visits are entered for and judged by: customers, sites, systems, people, products, instruments, reagent lots, rules and the firm's own tests. A firm may type it in here or import it as a file; both give the same records.",
                    "Todo aquello para lo que se anotan y con lo que se juzgan las visitas: clientes, sitios, sistemas, personas, productos, instrumentos, lotes de reactivo, normas y ensayos propios. La empresa puede escribirlo aquí o importarlo como archivo; el resultado es el mismo.",
                    "Tudo aquilo para que as visitas são anotadas e com que são avaliadas: clientes, locais, sistemas, pessoas, produtos, instrumentos, lotes de reagente, regras e ensaios próprios. A empresa pode digitar aqui ou importar um arquivo; os registros são os mesmos."),
                SetUpTexts.StartWhy,
            ],
            "/setup"),
        new(
            "setup-lists",
            new("Lists of the set-up", "Listas de la configuración", "Listas da configuração"),
            [
                new(
                    "Each list shows what is in use; retired records come back into view with the tick box. A record is opened by its code.",
                    "Cada lista muestra lo que está en uso; los retirados vuelven a verse con la casilla. Un registro se abre por su código.",
                    "Cada lista mostra o que está em uso; os retirados aparecem com a caixa de seleção. Um registro se abre pelo código."),
            ],
            "/setup/{List}"),
        new(
            "setup-record",
            new("Changing a record", "Cambiar un registro", "Mudar um registro"),
            [
                new(
                    "Numbers are typed with point or comma; where a number can be read in two ways, the form asks. What cannot be read stays as typed, with a message that names the field.",
                    "Los números se escriben con punto o coma; si un número se puede leer de dos maneras, el formulario pregunta. Lo que no se puede leer queda como se escribió, con un mensaje que nombra el campo.",
                    "Os números são digitados com ponto ou vírgula; se um número pode ser lido de dois modos, o formulário pergunta. O que não pode ser lido fica como digitado, com uma mensagem que cita o campo."),
                new(
                    "A code stays as it was first saved. What is no longer needed is taken out of use with a reason; nothing is deleted, and it can be restored.",
                    "Un código queda como se guardó la primera vez. Lo que ya no se necesita se retira con un motivo; nada se borra y se puede restaurar.",
                    "Um código fica como foi salvo pela primeira vez. O que não é mais necessário é retirado com um motivo; nada é apagado e pode ser restaurado."),
                new(
                    "When somebody else saved the same record meanwhile, both versions are shown: take over what stands, or go on with your changes upon it.",
                    "Si otra persona guardó el mismo registro entretanto, se muestran ambas versiones: tome lo que consta o siga con sus cambios encima.",
                    "Se outra pessoa salvou o mesmo registro entretanto, as duas versões são mostradas: adote o que consta ou continue com suas mudanças por cima."),
            ],
            "/setup/{List}/new",
            "/setup/{List}/record"),
        new(
            "setup-programmes",
            SetUpTexts.Programmes,
            [
                SetUpTexts.ProgrammesSucceed,
                new(
                    "A programme says set point, ranges, feeds and the make-up water it was worked out for. LogBook never sends any of it to a controller: a person sets it there and records it with a visit.",
                    "Un programa dice consigna, rangos, dosificaciones y el agua de reposición para la que se calculó. LogBook nunca envía nada a un controlador: una persona lo ajusta allí y lo anota con una visita.",
                    "Um programa diz ponto de ajuste, faixas, dosagens e a água de reposição para a qual foi calculado. O LogBook nunca envia nada a um controlador: uma pessoa ajusta lá e anota com uma visita."),
            ],
            "/setup/programmes",
            "/setup/programmes/new",
            "/setup/programmes/record"),
    ];
}
