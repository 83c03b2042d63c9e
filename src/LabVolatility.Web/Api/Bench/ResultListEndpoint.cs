using System.Text;
using LabVolatility.Laboratory.Bench;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Bench;

internal static class ResultListEndpoint
{
    private const string Csv = "text/csv";

    public static void MapResultList(this IEndpointRouteBuilder api) =>
        api.MapGet("/results", ListAsync)
            .Called("listResults", "Results, the first recorded first, page by page; as text/csv where that is accepted")
            .Needs(KeyScopes.Read).Refuses(400).Produces<ResultListAnswer>()
            .Asks("grade", "A grade of the laboratory.").Asks("tank", "A tank.").Asks("quantity", "As DVPE.")
            .Asks("from", "First local day of measuring, or first moment.").Asks("until", "Last local day of measuring, or last moment.").Asks("after", "The next of the page before.");

    private static async Task<IResult> ListAsync(HttpContext http, ReadResults read)
    {
        var mistakes = new Mistakes();
        var query = new QueryText(http.Request.Query, mistakes, "grade", "tank", "quantity", "from", "until", "after");
        query.Check();
        var wanted = new ReadResults.Wanted(query["grade"], query["tank"], query["quantity"], query.Bound("from"), query.Bound("until"));
        ReadResults.Place? after = null;
        if (query["after"] is { } text && !PlaceText.TryRead(text, out after))
            mistakes.Add("/after", "Send the next of the page before, as it came.");
        if (mistakes.Any)
            return ProblemAnswer.Of(mistakes);
        var page = await read.Run(wanted, after, http.RequestAborted);
        List<ResultLine> lines = [.. page.Lines.Select(ResultLine.Of)];
        var next = page.Next is { } place ? PlaceText.Of(place) : null;
        if (!http.Request.GetTypedHeaders().Accept.Any(a => a.MediaType.Equals(Csv, StringComparison.OrdinalIgnoreCase)))
            return TypedResults.Ok(new ResultListAnswer(lines, next));
        if (next is not null)
            http.Response.Headers.Link = $"<{http.Request.Path}{Following(http.Request.Query, next)}>; rel=\"next\"";
        return TypedResults.Text(ResultCsv.Write(lines), Csv, Encoding.UTF8);
    }

    private static QueryString Following(IQueryCollection query, string next) =>
        QueryString.Create(query.Where(q => q.Key != "after").Append(new("after", next)));
}
