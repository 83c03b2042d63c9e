using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Laboratory.Storage;

namespace LabVolatility.Laboratory.Methods;

/// <summary>The laboratory's own correlation of a method that is in force today; null where none is set.</summary>
public sealed class ReadOwnCorrelation(Func<LabContext> open, TimeProvider clock)
{
    public async Task<Correlation?> Run(TestMethod method, CancellationToken cancel = default)
    {
        await using var context = open();
        var time = LaboratoryTime.Of(await SettingsInForce.LoadAsync(context, cancel));
        return await OwnCorrelations.OnAsync(context, method, time.Day(clock.GetUtcNow()), cancel);
    }
}
