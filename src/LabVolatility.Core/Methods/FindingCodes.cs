namespace LabVolatility.Core.Methods;

/// <summary>The codes a finding may carry.</summary>
public static class FindingCodes
{
    /// <summary>The pressure or the kind of sample is outside what the method covers.</summary>
    public const string OutsideScope = "outside-scope";

    /// <summary>The chamber was off its temperature.</summary>
    public const string TemperatureOff = "temperature-off";

    /// <summary>The vapour-liquid ratio was off its setting.</summary>
    public const string RatioOff = "ratio-off";

    /// <summary>The container was too empty or too full.</summary>
    public const string FillLevel = "fill-level";

    /// <summary>Container or size that the method doesn't take.</summary>
    public const string Container = "container";

    /// <summary>The chilled sample was hazy: suffix H, precision void.</summary>
    public const string Hazy = "hazy";

    /// <summary>The chilled sample had parted into two liquids.</summary>
    public const string TwoPhases = "two-phases";

    /// <summary>The sample was not air-saturated, or nobody said so.</summary>
    public const string NotAirSaturated = "not-air-saturated";

    /// <summary>The gas part can't be right: no physical solution, above the total, or hard to believe.</summary>
    public const string GasPressureImplausible = "gas-pressure-implausible";

    /// <summary>Rinses, temperature of taking in or repeated runs are not as the method or the trade has them.</summary>
    public const string SettingsOff = "settings-off";

    /// <summary>No correlation turns the vapour pressure into the pressure that a specification speaks of.</summary>
    public const string NoCorrelation = "no-correlation";

    /// <summary>The pressure was read before it stood still.</summary>
    public const string NotAtEquilibrium = "not-at-equilibrium";

    /// <summary>The container had been opened for another test before.</summary>
    public const string FirstTest = "first-test";

    /// <summary>The sample was not chilled as the method asks before it was opened.</summary>
    public const string NotChilled = "not-chilled";

    /// <summary>A reading that the method needs is missing.</summary>
    public const string ReadingMissing = "reading-missing";
}
