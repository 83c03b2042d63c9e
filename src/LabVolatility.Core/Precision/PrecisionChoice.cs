using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Core.Precision;

/// <summary>Picks the precision statement that applies to a result.</summary>
public static class PrecisionChoice
{
    /// <summary>
    /// The statement of exactly this method, edition and quantity whose container and range fit; the one made for
    /// the container before a general one, the one in the result's unit before a converted one.
    /// </summary>
    /// <param name="statements">What ships and what the laboratory entered.</param>
    /// <param name="question">What is asked for.</param>
    /// <remarks>Source: common practice; older editions and sister methods never fill in.</remarks>
    public static PrecisionAnswer Choose(IReadOnlyList<PrecisionStatement> statements, PrecisionQuestion question)
    {
        var named = $"{question.Method}, edition {question.Edition}, {question.Quantity}";
        var own = statements.Where(s => s.Method == question.Method && s.Quantity == question.Quantity).ToList();
        var current = own.Where(s => s.Edition == question.Edition).ToList();
        if (current.Count == 0)
        {
            return new(null, own.Count == 0
                ? $"No precision is set for {named}; enter it from the laboratory's own copy."
                : $"No precision is set for {named}; edition {own[0].Edition} doesn't fill in for it.");
        }

        var held = current.Where(s => Holds(s, question)).ToList();
        if (held.Count == 0)
            return new(null, $"The precision set for {named} is for other containers than a {Container(question)}.");
        var covering = held.Where(s => s.Covers(question.Level)).ToList();
        return covering.Count == 0
            ? new(null, $"{question.Level} is outside the range of the precision set for {named}.")
            : Best(covering, question, named);
    }

    private static PrecisionAnswer Best(List<PrecisionStatement> fitting, PrecisionQuestion question, string named)
    {
        var ranked = fitting.GroupBy(s => Rank(s, question)).MaxBy(group => group.Key)!.ToList();
        return ranked.Count == 1
            ? new(ranked[0], $"Precision of {named}: {ranked[0].Source}.")
            : new(null, $"More than one precision is set for {named} and a {Container(question)}; keep one.");
    }

    private static bool Holds(PrecisionStatement statement, PrecisionQuestion question) =>
        (statement.Container is null || statement.Container == question.Container)
        && (statement.ContainerMillilitres is null
            || statement.ContainerMillilitres == question.ContainerVolume?.In(VolumeUnit.Millilitre));

    private static int Rank(PrecisionStatement statement, PrecisionQuestion question) =>
        (statement.ContainerMillilitres is null ? 0 : 4)
        + (statement.Container is null ? 0 : 2)
        + (statement.Unit == question.Level.Unit ? 1 : 0);

    private static string Container(PrecisionQuestion question) =>
        question.ContainerVolume is { } volume
            ? $"{question.Container.Text()} of {volume}"
            : $"{question.Container.Text()} of unknown size";
}
