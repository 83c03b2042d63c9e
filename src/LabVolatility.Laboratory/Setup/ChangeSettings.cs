using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Setup;

/// <summary>Changes what the laboratory is called and by which clock it lives.</summary>
public sealed class ChangeSettings(Func<LabContext> open)
{
    public async Task<Answer<LaboratorySettings>> Run(Actor actor, SettingsChange change, CancellationToken cancellationToken = default)
    {
        if (actor.Lacks(Right.Administer, "Changing the laboratory's settings") is { } lacking)
            return Answer<LaboratorySettings>.Forbidden(lacking);
        var problems = SettingsRules.Problems(change);
        if (problems.Count > 0)
            return Answer<LaboratorySettings>.Invalid(problems);

        await using var lab = open();
        var settings = await lab.Settings.SingleAsync(cancellationToken);
        if (settings.Version != change.Version)
            return await ChangedAsync(lab, settings, cancellationToken);
        lab.Act = actor.Does("change settings");
        settings.Name = change.Name.Trim();
        settings.Place = Blank(change.Place);
        settings.TimeZone = change.TimeZone;
        settings.ShiftStarts = [.. change.ShiftStarts.Order()];
        settings.RetainDays = change.RetainDays;
        settings.PublicAddress = Blank(change.PublicAddress)?.TrimEnd('/');
        settings.EmergencyNumbers = Blank(change.EmergencyNumbers);
        try
        {
            await lab.SaveChangesAsync(cancellationToken);
        }
        catch (DbUpdateConcurrencyException)
        {
            return await ChangedAsync(lab, settings, cancellationToken);
        }

        return Answer<LaboratorySettings>.Done(settings);
    }

    private static async Task<Answer<LaboratorySettings>> ChangedAsync(LabContext lab, LaboratorySettings seen, CancellationToken cancellationToken) =>
        Answer<LaboratorySettings>.Conflict(
            await ChangedMeanwhile.TextAsync<LaboratorySettings>(lab, "What stands here", seen.Id, cancellationToken),
            await lab.Settings.AsNoTracking().SingleAsync(cancellationToken));

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
