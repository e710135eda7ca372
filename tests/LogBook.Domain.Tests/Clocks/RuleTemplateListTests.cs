using LogBook.Domain.Clocks;

namespace LogBook.Domain.Tests.Clocks;

/// <summary>
/// Each row of the trade guide's compliance table (its section 3) has its templates, or a reason why a rule of the exchange format cannot say
/// it. A row that is read anew is entered here first.
/// </summary>
public sealed class RuleTemplateListTests
{
    private static readonly (string Row, string[] Codes)[] Rows =
    [
        ("New York State 4-1.3, report every 90 days", ["NYS-REPORT"]),
        ("New York State 4-1.4, culture", ["NYS-COL"]),
        ("New York State 4-1.4, Legionella after the start, every 90 days, after a loss of power", ["NYS-START", "NYS-LEG", "NYS-POWER"]),
        ("New York State 4-1.6 and Appendix 4-A, notification, bands, retest", ["NYS-LEG"]),
        ("New York State 4-1.8, inspection and certification", ["NYS-INSP", "NYS-CERT"]),
        ("New York City, pH, temperature, conductivity, biocide", ["NYC-PH", "NYC-TEMP", "NYC-COND", "NYC-BIOC"]),
        ("New York City, biological indicator", ["NYC-BIO"]),
        ("New York City, inspection", ["NYC-INSP"]),
        ("New York City, Legionella", ["NYC-LEG", "NYC-LEG"]),
        ("New York City, dip slide bands", ["NYC-DIP"]),
        ("United Kingdom, monitoring table, make-up", ["UK-MAKEUP"]),
        ("United Kingdom, monitoring table, weekly", ["UK-COND", "UK-OXID", "UK-PH", "UK-AER"]),
        ("United Kingdom, monitoring table, monthly", ["UK-HARD", "UK-CHL", "UK-INH"]),
        ("United Kingdom, monitoring table, quarterly", ["UK-ALK", "UK-SO4", "UK-SOLIDS", "UK-IRON", "UK-TEMP", "UK-LEG"]),
        ("United Kingdom, action levels", ["UK-AER", "UK-LEG"]),
        ("Germany s. 4, check in the plant, count, Legionella", ["DE-CHECK", "DE-COL", "DE-LEG"]),
        ("Germany, Annex 1", ["DE-LEG"]),
        ("Quebec 406-419", ["QC-LEG", "QC-START"]),
        ("New South Wales ss. 17-19", ["NSW-LEG", "NSW-COL", "NSW-INSP", "NSW-CHEM", "NSW-REPORT"]),
        ("Victoria 2019", ["VIC-INSP", "VIC-COL", "VIC-LEG", "VIC-CLEAN"]),
        ("AS/NZS 3666.3 by way of Queensland", ["QLD-COL"]),
        ("Canada MD 15161", ["CA-DIP", "CA-LEG"]),
        ("Hong Kong EMSD", ["HK-CHEM", "HK-COL", "HK-LEG", "HK-LEG-CARE"]),
        ("France 2921", ["FR-LEG", "FR-LEG-2M"]),
        ("Singapore 2001", ["SG-COL", "SG-LEG"]),
        ("Spain RD 487/2022", ["ES-REC"]),
        ("New Jersey 2024 c.66", ["NJ-PLAN"]),
        ("Guides of the United States, with the microbiology chapter", ["CDC-LEG", "OSHA-LEG", "UFC-COL"]),
    ];

    // No clock: what a record holds, how it is kept or shown. Or a clock that a rule of the format cannot say.
    private static readonly (string Row, string Why)[] NotRules =
    [
        ("New York State 4-1.4, loss of biocide feed and other events", "no event of the format"),
        ("New York State 4-1.7, 4-1.9", "certificates, product registration and the plan on site: records, no interval"),
        ("United Kingdom, HSE / L8; HSG274 halogen at its pH; two signatures", "what a record holds"),
        ("Germany s. 12; reference value of the first six", "how the log is kept; a limit that is worked out from results"),
        ("New South Wales 2018", "an offence, no interval"),
        ("Victoria, cleaning after a stop of more than a month", "a rule after an event knows no shortest stop: it would ask after each start"),
        ("Victoria report minimum", "layout of the summary"),
        ("Canada, Legionella also above 100,000 and 18 °C", "a band of one test asks for no other test"),
        ("UFC export, WaterSense two ratios, LEED tips", "figures and records, no interval"),
    ];

    [Fact]
    public void Rows_OfTheTradeGuide_HaveTheirTemplates()
    {
        var known = RuleTemplates.All.Select(template => template.Rule.Code).ToHashSet(StringComparer.Ordinal);

        Assert.Empty(Rows.SelectMany(row => row.Codes.Where(code => !known.Contains(code)).Select(code => $"{row.Row}: {code}")));
        Assert.Empty(known.Except(Rows.SelectMany(row => row.Codes)));
        Assert.All(NotRules, row => Assert.NotEmpty(row.Why));
    }

    /// <summary>Status of the guide's rows that were added last: C is confirmed, S second-hand, U unconfirmed; "C in part" is not confirmed.</summary>
    [Theory]
    [InlineData("NYS-REPORT", TemplateStatus.Confirmed, 3.0)]
    [InlineData("NYS-POWER", TemplateStatus.Unconfirmed, 3.0)]
    [InlineData("UK-MAKEUP", TemplateStatus.Confirmed, 5.0)]
    [InlineData("HK-CHEM", TemplateStatus.Confirmed, null)]
    [InlineData("FR-LEG-2M", TemplateStatus.SecondHand, null)]
    [InlineData("SG-LEG", TemplateStatus.Confirmed, null)]
    [InlineData("ES-REC", TemplateStatus.Unconfirmed, null)]
    [InlineData("NJ-PLAN", TemplateStatus.Confirmed, null)]
    public void Template_OfARow_HasItsStatusAndRetention(string code, TemplateStatus status, double? years)
    {
        var template = RuleTemplates.All.Single(template => template.Rule.Code == code);

        Assert.Equal((status, years), (template.Status, template.KeepYears));
    }

    /// <summary>What is superseded cannot be taken over for days of today.</summary>
    [Fact]
    public void Singapore_SupersededRegulations_HaveEnded() => Assert.All(
        RuleTemplates.All.Where(template => template.Rule.Jurisdiction == "Singapore"), template => Assert.False(RuleAdoption.IsWithin(template, new DateOnly(2021, 1, 1))));
}
