namespace LabVolatility.Core.Limits;

/// <summary>One row of an allowance table.</summary>
/// <param name="EthanolPercent">% (V/V).</param>
/// <param name="Amount">In the limit's unit.</param>
public sealed record AllowancePoint(decimal EthanolPercent, decimal Amount);
