namespace LabVolatility.Core.Limits;

/// <summary>Ethanol contents that a limit is made for.</summary>
/// <param name="Above">% (V/V), not included; null: from none on.</param>
/// <param name="UpTo">% (V/V), included; null: without an end.</param>
public sealed record EthanolRange(decimal? Above, decimal? UpTo)
{
    /// <summary>Whether it holds a content; one that wasn't measured counts as the lowest.</summary>
    /// <param name="percent">% (V/V); null: not measured.</param>
    public bool Contains(decimal? percent) =>
        percent is not { } known ? Above is null : (Above is null || known > Above) && (UpTo is null || known <= UpTo);
}
