using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Setup;

namespace LabVolatility.Web.Api.Records;

internal static class RecordsEndpoint
{
    public static void MapRecords(this IEndpointRouteBuilder api) =>
        api.MapGet("/records/check", async (CheckRecords check, CancellationToken cancel) =>
            {
                var report = await check.Run(cancel);
                return TypedResults.Ok(new RecordsAnswer(report.Intact, report.Records, report.Head, report.FirstBroken));
            })
            .Called("checkRecords", "Check the chain of records and the rows it speaks of").Needs(KeyScopes.Read);
}
