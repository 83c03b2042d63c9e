using LabVolatility.Core.Assessment;
using LabVolatility.Core.Limits;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>Results held against limits; nothing is stored.</summary>
internal static class ConformityEndpoint
{
    public static void MapConformity(this IEndpointRouteBuilder api) =>
        api.MapPost("/calculations/conformity", CalculateAsync)
            .Called("calculateConformity", "Results against a bare limit, or against the limits in force then and there")
            .Needs(KeyScopes.Calculate).Takes(ConformityShape.Bare, ConformityShape.Catalogue).Produces<ConformityAnswer>();

    private static async Task<IResult> CalculateAsync(HttpContext http, CatalogueSource source)
    {
        var (body, mistakes, refusal) = await BodyReader.ReadAsync(http, ConformityShape.For);
        if (refusal is not null)
            return refusal;
        if (ConformityShape.For(body) == ConformityShape.Bare)
            return BareLimit.Read(body, mistakes) is { } input ? TypedResults.Ok(Judge(input)) : ProblemAnswer.Of(mistakes);
        var catalogue = await source.ReadAsync(http.RequestAborted);
        return CatalogueQuestion.Read(body, mistakes, catalogue) is { } question
            ? TypedResults.Ok(Judge(question, catalogue))
            : ProblemAnswer.Of(mistakes);
    }

    private static ConformityAnswer Judge(LimitInput input)
    {
        var outcome = Conformity.Judge(input);
        return new ConformityAnswer(outcome.Outcome.Text(), [LimitAnswer.Of(input, outcome)], null);
    }

    private static ConformityAnswer Judge(CatalogueQuestion question, KnownCatalogue catalogue)
    {
        var pick = LimitPicker.Pick(catalogue.Areas, question.Product);
        var assessed = Catalogue.Assess(pick, question.Results, question.Rule, confidence: question.Confidence);
        return new ConformityAnswer(assessed.Outcome.Text(), [.. assessed.Limits.Select(LimitAnswer.Of)], assessed.Season);
    }
}
