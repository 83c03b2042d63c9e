using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>The laboratory's settings as they stand, read once a context.</summary>
internal static class SettingsInForce
{
    public static Task<LaboratorySettings> LoadAsync(LabContext context, CancellationToken cancel) =>
        context.Read.GetAsync(() => context.Settings.AsNoTracking().FirstAsync(cancel));
}
