namespace LogBook.Domain.Estimates;

/// <summary>Codes of the default uncertainties.</summary>
public static class UncertaintyCodes
{
    /// <summary>Hand conductivity meter, scatter of one reading.</summary>
    public const string HandConductivity = "hand-conductivity";

    /// <summary>Hand conductivity meter, what repeats, when checked in a standard within 30 days.</summary>
    public const string HandConductivityProved = "hand-conductivity-proved";

    /// <summary>Hand conductivity meter, what repeats, when not.</summary>
    public const string HandConductivityUnproved = "hand-conductivity-unproved";

    /// <summary>Temperature compensation between 15 and 35 °C.</summary>
    public const string CompensationNear25 = "compensation-15-35";

    /// <summary>Temperature compensation outside 15 to 35 °C, or at an unknown temperature.</summary>
    public const string CompensationFar = "compensation-far";

    /// <summary>Display of the controller.</summary>
    public const string ControllerDisplay = "controller-display";

    /// <summary>Drop titration, share of the result.</summary>
    public const string DropTest = "drop-test";

    /// <summary>Photometric tests (inhibitor, DPD), share of the result.</summary>
    public const string PhotometricTest = "photometric-test";

    /// <summary>Share of the variance of a test that belongs to its reagent lot.</summary>
    public const string LotShare = "lot-share";

    /// <summary>pH.</summary>
    public const string Ph = "pH";

    /// <summary>Water meter.</summary>
    public const string WaterMeter = "water-meter";

    /// <summary>Paddle-wheel meter.</summary>
    public const string PaddleWheel = "paddle-wheel";

    /// <summary>Bleed valve flow timed into a bucket within 180 days.</summary>
    public const string BleedValveTimed = "bleed-valve-timed";

    /// <summary>Bleed valve flow from the file.</summary>
    public const string BleedValveUntimed = "bleed-valve";

    /// <summary>Pump output by its rating.</summary>
    public const string PumpRating = "pump-rating";

    /// <summary>Pump output after a drawdown.</summary>
    public const string PumpDrawdown = "pump-drawdown";

    /// <summary>Level in a sight glass.</summary>
    public const string LevelSightGlass = "level-sight-glass";

    /// <summary>Level by dip stick.</summary>
    public const string LevelDip = "level-dip";

    /// <summary>Level by a gauge in percent or litres, share of the capacity.</summary>
    public const string LevelGauge = "level-gauge";

    /// <summary>Gross weight on a floor scale.</summary>
    public const string LevelScale = "level-scale";

    /// <summary>System volume.</summary>
    public const string SystemVolume = "system-volume";

    /// <summary>Dip slide, decades.</summary>
    public const string DipSlide = "dip-slide";

    /// <summary>Plate count, decades.</summary>
    public const string PlateCount = "plate-count";

    /// <summary>Least uncertainty of the mean make-up that fed the present water.</summary>
    public const string MakeUpMean = "make-up-mean";
}
