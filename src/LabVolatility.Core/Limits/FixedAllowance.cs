namespace LabVolatility.Core.Limits;

/// <summary>The same amount anywhere inside an ethanol window.</summary>
/// <param name="Amount">In the limit's unit.</param>
/// <param name="EthanolLow">Ethanol, % (V/V), included.</param>
/// <param name="EthanolHigh">Ethanol, % (V/V), included.</param>
/// <param name="Source">Where it is laid down.</param>
/// <param name="RequiresDerogation">Whether the area must have been granted a derogation for it.</param>
public sealed record FixedAllowance(
    decimal Amount, decimal EthanolLow, decimal EthanolHigh, string Source, bool RequiresDerogation = false)
    : Allowance(Source, RequiresDerogation);
