using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>The settings as they are now; null before the first start has made them.</summary>
public sealed class ReadSettings(Func<LabContext> open)
{
    public async Task<LaboratorySettings?> Run(CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        return await lab.Settings.AsNoTracking().SingleOrDefaultAsync(cancellationToken);
    }
}
