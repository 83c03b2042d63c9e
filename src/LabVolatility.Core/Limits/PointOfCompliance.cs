namespace LabVolatility.Core.Limits;

/// <summary>Where a limit must be met.</summary>
public enum PointOfCompliance
{
    /// <summary>Anywhere before retail.</summary>
    Terminal,

    /// <summary>At the retailer or a wholesale purchaser-consumer.</summary>
    Retail,
}
