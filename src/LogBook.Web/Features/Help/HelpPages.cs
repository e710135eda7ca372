using Microsoft.AspNetCore.Routing.Template;

namespace LogBook.Web.Features.Help;

/// <summary>All help pages, and which of them belongs to an address.</summary>
public static class HelpPages
{
    /// <summary>All, by key.</summary>
    public static IReadOnlyList<HelpPage> All { get; } =
    [
        .. typeof(HelpPages).Assembly.GetTypes()
            .Where(type => type is { IsClass: true, IsAbstract: false } && typeof(IHelpSource).IsAssignableFrom(type))
            .SelectMany(type => ((IHelpSource)Activator.CreateInstance(type)!).Pages)
            .OrderBy(page => page.Key, StringComparer.Ordinal),
    ];

    // The most definite template first: "/visits/{id}/amend" before "/visits/{id}".
    private static readonly (TemplateMatcher Matcher, HelpPage Page)[] ByRoute =
    [
        .. from page in All
           from route in page.Routes
           let template = TemplateParser.Parse(route.TrimStart('/'))
           orderby template.Parameters.Count, template.Segments.Count descending
           select (new TemplateMatcher(template, []), page),
    ];

    /// <summary>The page of a key, or null.</summary>
    public static HelpPage? Find(string key) => All.FirstOrDefault(page => page.Key == key);

    /// <summary>Address of the help for a page of this installation.</summary>
    /// <param name="relative">Address without its leading slash, query and anchor allowed.</param>
    public static string PathFor(string relative)
    {
        var path = "/" + relative.Split('?', '#')[0];
        foreach (var (matcher, page) in ByRoute)
        {
            if (matcher.TryMatch(path, []))
            {
                return "/help/" + page.Key;
            }
        }

        return "/help";
    }
}
