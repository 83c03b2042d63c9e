namespace LabVolatility.Core.Limits;

/// <summary>An amount that follows a table in ethanol content, straight lines between its points.</summary>
/// <param name="Points">At least two, ethanol rising.</param>
/// <param name="Source">Where it is laid down.</param>
/// <param name="RequiresDerogation">Whether the area must have been granted a derogation for it.</param>
public sealed record TableAllowance(
    IReadOnlyList<AllowancePoint> Points, string Source, bool RequiresDerogation = false)
    : Allowance(Source, RequiresDerogation)
{
    /// <summary>The amount at an ethanol content, not rounded; null outside the table.</summary>
    /// <param name="ethanolPercent">% (V/V).</param>
    /// <remarks>Source: Directive 98/70/EC, annex III as amended by 2011/63/EU: linear between the points.</remarks>
    public decimal? At(decimal ethanolPercent)
    {
        for (var i = 1; i < Points.Count; i++)
        {
            var (low, high) = (Points[i - 1], Points[i]);
            if (ethanolPercent >= low.EthanolPercent && ethanolPercent <= high.EthanolPercent)
            {
                var rise = (high.Amount - low.Amount) * (ethanolPercent - low.EthanolPercent);
                return low.Amount + (rise / (high.EthanolPercent - low.EthanolPercent));
            }
        }

        return null;
    }
}
