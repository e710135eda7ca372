namespace LogBook.Domain.Assessments;

/// <summary>What a threshold or default uncertainty is about; the order in which they are shown.</summary>
public enum SettingGroup
{
    /// <summary>Probes and conductivity.</summary>
    Probes,

    /// <summary>Cycles, water and bleed.</summary>
    Water,

    /// <summary>Water meters and values that are hard to believe.</summary>
    Meters,

    /// <summary>Chemistry: make-up, deposits, scale, corrosion, pH.</summary>
    Chemistry,

    /// <summary>Products: feeds, pumps, stock, residuals.</summary>
    Products,

    /// <summary>Biocides and microbiology.</summary>
    Biocides,

    /// <summary>Controller: settings and clock.</summary>
    Controller,

    /// <summary>Visits, dates, hand meters, lots and mail.</summary>
    Service,

    /// <summary>Default standard uncertainties.</summary>
    Uncertainties,
}
