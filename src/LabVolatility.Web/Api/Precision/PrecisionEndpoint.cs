using LabVolatility.Core.Methods;
using LabVolatility.Core.Precision;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Precision;

/// <summary>Whether results agree within r, and what to do when they don't; nothing is stored.</summary>
internal static class PrecisionEndpoint
{
    public static void MapPrecision(this IEndpointRouteBuilder api) =>
        api.MapPost("/calculations/precision", CalculateAsync)
            .Called("calculatePrecision", "Whether results agree, and what to do next")
            .Needs(KeyScopes.Calculate).Takes(PrecisionShape.Shape).Produces<PrecisionAnswer>();

    private static async Task<IResult> CalculateAsync(HttpContext http, AnsweredPrecision precision)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, _ => PrecisionShape.Shape);
        if (refusal is not null)
            return refusal;
        if (mistakes.Any || !TestMethods.TryFind(body["method"].Text, out var method))
            return ProblemAnswer.Of(mistakes);
        return TypedResults.Ok(Judge(body, method, await precision.Run(http.RequestAborted)));
    }

    private static PrecisionAnswer Judge(Given body, TestMethod method, IReadOnlyList<PrecisionStatement> statements)
    {
        var values = body["values"].Items.Select(v => v.Pressure!.Value).ToList();
        var unit = values[0].Unit;
        List<decimal> numbers = [.. values.Select(v => v.In(unit))];
        var level = AbsolutePressure.From(numbers.Sum() / numbers.Count, unit);
        var sample = body["sample"];
        var hazy = sample["hazy"].Flag == true;
        var statement = hazy ? null : Statement(statements, method, sample, level);
        var r = hazy ? null : body["repeatability"].Pressure?.In(unit) ?? statement?.RepeatabilityAt(level, unit);
        var bigR = hazy ? null : body["reproducibility"].Pressure?.In(unit) ?? statement?.ReproducibilityAt(level, unit);
        var verdict = Duplicates.Judge(numbers, r);
        return new PrecisionAnswer(
            Quantity.Of(r, unit), Quantity.Of(bigR, unit), verdict.Acceptable, Quantity.Of(verdict.Mean, unit.Symbol()),
            Rounding.Text(verdict.Mean, PressureResolution.Places(unit)), verdict.Used, verdict.Next.Text(), verdict.Needed);
    }

    private static PrecisionStatement? Statement(IReadOnlyList<PrecisionStatement> statements, TestMethod method, Given sample, AbsolutePressure level)
    {
        var quantity = Correlations.Find(method.Designation, method.DefaultAuthority)?.Quantity ?? method.Quantities[^1];
        ContainerKind? container = ContainerKinds.TryParse(sample["container"].Text, out var kind) ? kind : null;
        return CataloguePrecision.Find(statements, method, quantity, container, sample["containerVolume"].Volume, level);
    }
}
