using System.Reflection;

namespace LogBook.Domain.Tests.Reference;

/// <summary>The texts that the code of a class loads, and those of the data beside its theories.</summary>
internal static class CodeTexts
{
    private const BindingFlags Every = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly;
    private const byte LoadString = 0x72;
    private const int TokenOfString = 0x70;

    public static HashSet<string> Of(Type type) =>
    [
        .. WithNested(type).SelectMany(one => one.GetMethods(Every).Cast<MethodBase>().Concat(one.GetConstructors(Every))).SelectMany(method => Loaded(method).Concat(Given(method))),
        // Static constructors are not among the constructors of an instance.
        .. WithNested(type).Select(one => one.TypeInitializer).OfType<ConstructorInfo>().SelectMany(Loaded),
    ];

    // Lambdas and iterators become nested types.
    private static IEnumerable<Type> WithNested(Type type) => type.GetNestedTypes(Every).SelectMany(WithNested).Prepend(type);

    private static IEnumerable<string> Given(MethodBase method) => method.GetCustomAttributes<InlineDataAttribute>()
        .SelectMany(data => data.GetData((MethodInfo)method)).SelectMany(values => values).OfType<string>();

    // A text is an opcode and its token: every four bytes behind one that have the mark of a text and resolve are taken.
    private static List<string> Loaded(MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        var texts = new List<string>();
        for (var i = 0; i + 4 < code.Length; i++)
        {
            if (code[i] != LoadString || code[i + 4] != TokenOfString)
            {
                continue;
            }

            try
            {
                texts.Add(method.Module.ResolveString(BitConverter.ToInt32(code, i + 1)));
            }
            catch (ArgumentException)
            {
                // No text: the byte belongs to an operand.
            }
        }

        return texts;
    }
}
