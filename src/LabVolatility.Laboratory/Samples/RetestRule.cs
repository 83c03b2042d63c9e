namespace LabVolatility.Laboratory.Samples;

/// <summary>What is done on an occasion, step by step.</summary>
public sealed record RetestRule(RetestOccasion Occasion, IReadOnlyList<RetestStep> Steps)
{
    /// <summary>The steps one by one: what may be done twice stands there twice.</summary>
    public IReadOnlyList<RetestStep> Places => [.. Steps.SelectMany(s => Enumerable.Repeat(s, s.Times))];
}
