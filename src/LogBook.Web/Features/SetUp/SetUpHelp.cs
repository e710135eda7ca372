using LogBook.Domain.Languages;
using LogBook.Web.Features.Help;
using LogBook.Web.Features.SetUp.Phrases;
using LogBook.Web.Features.SetUp.Templates;
using LogBook.Web.Features.SetUp.Thresholds;

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
            "setup-phrases",
            PhrasePageTexts.Title,
            [
                PhrasePageTexts.Intro,
                PhrasePageTexts.HowTo,
            ],
            "/setup/phrases"),
        new(
            "setup-thresholds",
            ThresholdTexts.Title,
            [
                ThresholdTexts.Intro,
                new(
                    "Choose above whether to look at the values of the whole firm or of one system; a system takes the firm's value until it has its own. Only an administrator sees and changes them.",
                    "Elija arriba si ver los valores de toda la empresa o de un sistema; un sistema toma el valor de la empresa mientras no tenga el suyo. Solo un administrador los ve y los cambia.",
                    "Escolha acima se quer ver os valores de toda a empresa ou de um sistema; um sistema toma o valor da empresa enquanto não tem o seu. Só um administrador os vê e muda."),
                new(
                    "A finding names the limit it used and whether the firm has set it. Wider limits find less and later; narrower ones may flag healthy systems. Values far from the default are refused, so that a slipped point silences nothing.",
                    "Un hallazgo nombra el límite que usó y si lo fijó la empresa. Límites más amplios hallan menos y más tarde; más estrechos pueden señalar sistemas sanos. Se rechazan valores muy lejos del defecto, para que una coma corrida no silencie nada.",
                    "Uma constatação cita o limite que usou e se a empresa o definiu. Limites mais largos encontram menos e mais tarde; mais estreitos podem apontar sistemas sadios. Valores muito longe do padrão são recusados, para que uma vírgula fora do lugar não silencie nada."),
            ],
            "/setup/thresholds"),
        new(
            "setup-threshold",
            new("One threshold or uncertainty", "Un umbral o una incertidumbre", "Um limiar ou uma incerteza"),
            [
                new(
                    "Type the own value and why it is better here, then save. What was in force before can be put back at once with Undo, and later by going back to the default; every change stays on record with who, when and why.",
                    "Escriba el valor propio y por qué es mejor aquí, y guarde. Lo que regía antes se repone al momento con Deshacer, y más tarde volviendo al valor por defecto; cada cambio queda registrado con quién, cuándo y por qué.",
                    "Digite o valor próprio e por que é melhor aqui, e salve. O que valia antes volta na hora com Desfazer, e depois voltando ao padrão; cada mudança fica registrada com quem, quando e por quê."),
                new(
                    "An uncertainty is one standard deviation. Where it repeats from visit to visit, as a hand meter's own error does, it does not shrink with more readings.",
                    "Una incertidumbre es una desviación típica. Si se repite de visita en visita, como el error propio de un medidor portátil, no disminuye con más lecturas.",
                    "Uma incerteza é um desvio padrão. Se se repete de visita em visita, como o erro próprio de um medidor portátil, não diminui com mais leituras."),
            ],
            "/setup/thresholds/record"),
        new(
            "rule-templates",
            TemplateTexts.Title,
            [
                TemplateTexts.Intro,
                new(
                    "Taking one over makes a rule of the firm from the day given, and puts the chosen systems under it. Where the firm has the rule already, a new version begins on that day and the one before ends the day before; records keep the version of their date. What was written about the check with the authority stands with the source.",
                    "Asumir una crea una norma de la empresa desde el día indicado y pone bajo ella los sistemas elegidos. Si la empresa ya la tiene, ese día empieza una versión nueva y la anterior acaba la víspera; los registros conservan la versión de su fecha. Lo escrito sobre la comprobación con la autoridad queda con la fuente.",
                    "Assumir um cria uma regra da empresa a partir do dia informado e põe sob ela os sistemas escolhidos. Se a empresa já tem a regra, uma nova versão começa nesse dia e a anterior termina na véspera; os registros mantêm a versão da sua data. O que se escreveu sobre a conferência com a autoridade fica com a fonte."),
            ],
            "/setup/rules/templates"),
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
