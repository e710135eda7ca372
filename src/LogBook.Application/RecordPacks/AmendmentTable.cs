using LogBook.Application.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>What was changed after a visit came in, value by value, and what was declared void.</summary>
internal static class AmendmentTable
{
    public static RecordTable Of(RecordWords words) => new(
        RecordTexts.Amendments,
        [
            new(RecordTexts.Day, 0), new(RecordTexts.Received, 1.3), new(RecordTexts.By, 1.2), new(RecordTexts.Version, 1), new(RecordTexts.Reason, 1.8), new(RecordTexts.What, 2.4), new(RecordTexts.Before, 1.4), new(RecordTexts.Now, 1.4),
            new(RecordTexts.Visit, 0),
        ],
        [.. words.Pack.Visits.SelectMany(visit => Amendments(words, visit).Concat(Void(words, visit)))],
        RecordTexts.AmendmentsIntro);

    private static IEnumerable<RecordRow> Amendments(RecordWords words, PackVisit entry)
    {
        for (var place = 1; place < entry.Versions.Count; place++)
        {
            var version = entry.Versions[place];
            var differences = words.Pack.TellsVersions ? VisitDifferences.Between(entry.Versions[place - 1].Visit, version.Visit, words.Pack.Zone) : [];
            object?[] head = [words.DayOf(entry.Visit), words.DayOf(version.ReceivedAt), words.Pack.TellsVersions ? version.Who : "", words[RecordTexts.VersionOf, version.Number], version.Reason ?? version.Visit.Reason ?? ""];
            if (differences.Count == 0)
            {
                yield return new RecordRow([.. head, "", "", "", entry.Visit.Id.ToString()], words.GroupOf(entry.Visit));
            }

            foreach (var difference in differences)
            {
                yield return new RecordRow(
                    [.. head, words[difference.Where], difference.Before is { } before ? words[before] : "–", difference.After is { } after ? words[after] : "–", entry.Visit.Id.ToString()], words.GroupOf(entry.Visit));
            }
        }
    }

    private static IEnumerable<RecordRow> Void(RecordWords words, PackVisit entry) => entry.VoidedAt is { } at
        ? [new RecordRow([words.DayOf(entry.Visit), words.DayOf(at), entry.VoidedBy ?? "", words[RecordTexts.Voided], entry.VoidedWhy ?? "", "", "", "", entry.Visit.Id.ToString()], words.GroupOf(entry.Visit))]
        : [];
}
