using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Web.Setup;

namespace LabVolatility.Web.Api;

/// <summary>The laboratory's own correlation of a method as other programs are told it; null where none is set.</summary>
/// <remarks>The demonstration's is made up, for its own screens: to a program it is not set, as in a laboratory that hasn't entered any.</remarks>
internal sealed class AnsweredCorrelation(ReadOwnCorrelation read, WebSettings settings)
{
    public Task<Correlation?> Run(TestMethod method, CancellationToken cancel) =>
        settings.Demo ? Task.FromResult<Correlation?>(null) : read.Run(method, cancel);
}
