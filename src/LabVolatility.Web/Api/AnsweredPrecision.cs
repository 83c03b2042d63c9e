using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Api;

/// <summary>The laboratory's own r and R as other programs are told them.</summary>
/// <remarks>The demonstration's are made up, for its own screens: to a program they are not set, as in a laboratory that hasn't entered any.</remarks>
internal sealed class AnsweredPrecision(ReadPrecision read, WebSettings settings)
{
    public async Task<IReadOnlyList<PrecisionStatement>> Run(CancellationToken cancel) =>
        settings.Demo ? [] : await read.Run(cancel);
}
