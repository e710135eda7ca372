namespace LogBook.Web.Features.SetUp.Forms;

/// <summary>A form while it is filled in: what it knows, what was found wrong, and whom to tell of a change.</summary>
/// <param name="scope">What it knows beside its own texts.</param>
/// <param name="changed">Called after each change.</param>
public sealed class FormState(FormScope scope, Action changed)
{
    /// <summary>What it knows beside its own texts.</summary>
    public FormScope Scope { get; } = scope;

    /// <summary>What was found wrong at the last save.</summary>
    public IReadOnlyList<FormIssue> Issues { get; set; } = [];

    /// <summary>Whether the record is new, so that its code may be written.</summary>
    public bool IsNew { get; set; }

    /// <summary>Whether something was typed since the last save.</summary>
    public bool IsTouched { get; set; }

    /// <summary>Tells of a change at a field; what was said of it is over.</summary>
    public void Touch(string place)
    {
        IsTouched = true;
        if (Issues.Any(issue => issue.Place == place))
        {
            Issues = [.. Issues.Where(issue => issue.Place != place)];
        }

        changed();
    }
}
