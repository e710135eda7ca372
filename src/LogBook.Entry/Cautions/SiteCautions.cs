using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;

namespace LogBook.Entry.Cautions;

/// <summary>Cautions that belong to what stands on the site, shown when a step is entered.</summary>
public static class SiteCautions
{
    /// <summary>Cautions of a step.</summary>
    /// <param name="state">The form.</param>
    /// <param name="step">The step that is entered.</param>
    /// <returns>Cautions, the graver first.</returns>
    public static IEnumerable<Caution> At(FormState state, EntryStep step)
    {
        switch (step)
        {
            case EntryStep.Stock:
                if (ProductCautions.IsAnyOther(state))
                {
                    yield return Caution.OtherProduct;
                }

                foreach (var caution in ProductCautions.Pairs(state))
                {
                    yield return caution;
                }

                if (state.Plan?.Programme?.Feeds.Any(f => f.Mode == FeedMode.Feeder) == true)
                {
                    yield return Caution.SolidOxidiser;
                }

                if (state.Draft.Text(DraftKey.Of(DraftKey.Visit, "kind")) == nameof(VisitKind.Delivery))
                {
                    yield return Caution.Delivery;
                }

                break;
            case EntryStep.Reference:
                // The probe is taken out between the fields of this step: after them it is too late.
                if (state.Plan?.System.Probes.Count > 0)
                {
                    yield return Caution.OpenedLine;
                }

                break;
            case EntryStep.Samples:
                // A result that comes later is read at a desk.
                if (state.Draft.Text(DraftKey.Of(DraftKey.Visit, "kind")) != nameof(VisitKind.Result))
                {
                    foreach (var caution in AtTheTower(state))
                    {
                        yield return caution;
                    }

                    yield return Caution.Basin;
                }

                break;
            case EntryStep.Tower:
                foreach (var caution in AtTheTower(state))
                {
                    yield return caution;
                }

                break;
            case EntryStep.Adjust:
                yield return Caution.Switches;

                // Here the outputs are tested, with or without a flow.
                if (state.Plan is { } plan && (state.Draft.Text(state.Key("running")) == "no" || state.Draft.Text(DraftKey.Of(DraftKey.Visit, "kind")) == nameof(VisitKind.StartUp)))
                {
                    foreach (var caution in ActCautions.NoFlow(plan))
                    {
                        yield return caution;
                    }
                }

                break;
            default:
                break;
        }
    }

    private static IEnumerable<Caution> AtTheTower(FormState state)
    {
        if (state.Draft.Text(state.Key("running")) != "no")
        {
            yield return Caution.RunningTower;
        }

        // A tower that stands is climbed all the more.
        yield return Caution.Heights;
    }
}
