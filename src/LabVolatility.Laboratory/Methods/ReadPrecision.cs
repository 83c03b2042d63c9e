using LabVolatility.Core.Precision;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Methods;

/// <summary>The precision statements that count now.</summary>
public sealed class ReadPrecision(Func<LabContext> open)
{
    public async Task<IReadOnlyList<PrecisionStatement>> Run(CancellationToken cancel = default)
    {
        await using var context = open();
        return await PrecisionInForce.LoadAsync(context, cancel);
    }
}
