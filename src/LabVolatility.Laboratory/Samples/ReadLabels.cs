using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Samples;

/// <summary>Reads what stands on the labels of a sample's containers; empty where there is no such sample.</summary>
public sealed class ReadLabels(Func<LabContext> open)
{
    public async Task<IReadOnlyList<LabelContent>> Run(string number, CancellationToken cancel = default)
    {
        await using var context = open();
        var sample = await context.Samples.AsNoTracking().Include(s => s.Containers).FirstOrDefaultAsync(s => s.Number == number, cancel);
        if (sample is null)
            return [];
        var settings = await SettingsInForce.LoadAsync(context, cancel);
        return [.. sample.Containers.OrderBy(c => c.Number).Select(c => new LabelContent
        {
            LaboratoryName = settings.Name,
            ContainerCode = c.Code,
            SampleNumber = sample.Number,
            Grade = sample.GradeCode,
            Tank = sample.TankCode,
            SamplePoint = sample.SamplePointCode,
            Level = sample.Level.ToString().ToLowerInvariant(),
            SampledAt = sample.SampledAt,
            TimeZone = settings.TimeZone,
            ContainerNumber = c.Number,
            ContainerCount = sample.Containers.Count,
        })];
    }
}
