using MudBlazor;

namespace LogBook.Web.Components.Layout;

/// <summary>Only shapes and type; colours stand in app.css, where light and dark need no script to take turns.</summary>
public static class FrameTheme
{
    /// <summary>The theme of the component library.</summary>
    public static MudTheme Theme { get; } = new()
    {
        LayoutProperties = new LayoutProperties { DefaultBorderRadius = "3px" },
        Typography = new Typography { Default = new DefaultTypography { FontFamily = ["var(--font)"] } },
    };
}
