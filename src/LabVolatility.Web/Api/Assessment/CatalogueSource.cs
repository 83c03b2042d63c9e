using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Api.Assessment;

/// <summary>Reads what the laboratory knows now.</summary>
internal sealed class CatalogueSource(LimitCatalogue limits, GradesInUse grades, AnsweredPrecision precision)
{
    public async Task<KnownCatalogue> ReadAsync(CancellationToken cancel) =>
        new(await limits.Run(cancel), await grades.Run(cancel), await precision.Run(cancel));
}
