using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Puts the row of settings down at the first start; what is not known is said to be so.</summary>
public sealed class MakeSettings(Func<LabContext> open)
{
    public const string NameNotEntered = "Laboratory (name not entered yet)";

    public async Task<LaboratorySettings> Run(bool demo, CancellationToken cancellationToken = default)
    {
        await using var lab = open();
        if (await lab.Settings.SingleOrDefaultAsync(cancellationToken) is { } there)
            return there;

        lab.Act = new Act(null, "first start", "start", "begin laboratory");
        var settings = new LaboratorySettings { Name = NameNotEntered, TimeZone = "Etc/UTC", IsDemo = demo };
        lab.Settings.Add(settings);
        try
        {
            await lab.SaveChangesAsync(cancellationToken);
            return settings;
        }
        catch (DbUpdateException race) when (lab.IsUniqueViolation(race))
        {
            await using var again = open();
            return await again.Settings.SingleAsync(cancellationToken);
        }
    }
}
