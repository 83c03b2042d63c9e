using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Commands;

/// <summary>Checks the chain of records and the rows it speaks of.</summary>
internal static class CheckTheRecords
{
    public static Task<int> RunAsync(CommandWorld world) => CommandServices.WithAsync(world, async (services, options) =>
    {
        await DatabaseThere.DemandAsync(services, options);
        var report = await services.GetRequiredService<CheckRecords>().Run();
        foreach (var finding in report.Findings)
            await world.Output.WriteLineAsync(finding);
        await world.Output.WriteLineAsync($"{(report.Intact ? "Intact" : "NOT INTACT")}: {report.Records} records, head {report.Head ?? "none"}"
            + (report.FirstBroken is { } first ? $", first broken record {first}" : "") + ".");
        return report.Intact ? 0 : CommandLine.Failed;
    });
}
