namespace LabVolatility.Core.Precision;

/// <summary>The statement that applies, or why none does.</summary>
/// <param name="Statement">The statement; null where none fits.</param>
/// <param name="Why">The reason, in words.</param>
public sealed record PrecisionAnswer(PrecisionStatement? Statement, string Why);
