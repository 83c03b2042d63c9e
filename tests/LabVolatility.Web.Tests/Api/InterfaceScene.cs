using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Instruments;
using LabVolatility.Laboratory.Methods;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;
using LabVolatility.Laboratory.Setup;
using LabVolatility.Web.Tests.Setup;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace LabVolatility.Web.Tests.Api;

/// <summary>One running laboratory with a grade, a tank, a tester that is ready on 2026-05-10, and keys.</summary>
public sealed class InterfaceScene : IAsyncLifetime
{
    public const string Grade = "G95";
    public const string Tester = "VP-1";
    public const string Operator = "i.fenwick";
    public const KeyScopes AllScopes = KeyScopes.Calculate | KeyScopes.Read | KeyScopes.Write | KeyScopes.Import;

    private Actor? _administrator;

    public LabHost Host { get; private set; } = null!;

    /// <summary>A program whose key has every scope.</summary>
    public Caller Program { get; private set; } = null!;

    public Guid ServiceId { get; private set; }

    public async ValueTask InitializeAsync()
    {
        Host = await LabHost.StartWithPeopleAsync();
        await using (var lab = Host.Open())
        {
            ServiceId = await lab.People.Where(p => p.UserName == DemoKey.OwnerUserName).Select(p => p.Id).SingleAsync();
            _administrator = await lab.People.Where(p => p.Roles == Roles.Administrator)
                .Select(p => new Actor(p.Id, p.FullName, p.Roles, "page", false)).FirstAsync();
        }

        await FillAsync();
        Program = new Caller(Host, await KeyAsync(AllScopes));
    }

    /// <summary>A new key's secret.</summary>
    public async Task<string> KeyAsync(KeyScopes scopes, int days = 30) => (await MakeKeyAsync(scopes, days)).Secret;

    public async Task<KeyMade> MakeKeyAsync(KeyScopes scopes, int days = 30)
    {
        var made = await Host.Services.GetRequiredService<MakeKey>().Run(_administrator!, new NewKey("test", ServiceId, scopes, days));
        return made.Value!;
    }

    public Task RevokeAsync(Guid key) => Host.Services.GetRequiredService<RevokeKey>().Run(_administrator!, key);

    public async ValueTask DisposeAsync()
    {
        Program.Dispose();
        await Host.DisposeAsync();
    }

    private async Task FillAsync()
    {
        await using var lab = Host.Open();
        lab.Act = new Act(null, "test", "command", "prepare test");
        var now = Host.Clock.GetUtcNow();
        lab.Add(new Grade
        {
            Code = Grade,
            Name = "Gasoline 95",
            Kind = SampleKind.Gasoline,
            State = ProductState.Finished,
            Tests = [new GradeTest("ASTM D5191", [Authority.Astm, Authority.Epa], false, 4)],
        });
        lab.Add(new Tank { Code = "T-7", Name = "Tank 7", GradeCode = Grade });
        lab.Add(new Instrument { Code = Tester, Name = "Tester 1", Methods = ["ASTM D5191"], CalibratedOn = new(2026, 1, 1), CalibrationDueOn = new(2027, 1, 1), LowKpa = 0, HighKpa = 200 });
        await lab.SaveChangesAsync();
        lab.Add(new Verification { Id = Guid.CreateVersion7(), InstrumentCode = Tester, On = new(2026, 5, 10), At = now.AddHours(-2), By = _administrator!.Id, Fluid = "verification fluid", InBand = true });
        lab.Add(new PrecisionEntry
        {
            Id = Guid.CreateVersion7(),
            Method = "EN 13016-1",
            Edition = "2024",
            Quantity = "DVPE",
            Unit = PressureUnit.Kilopascal,
            RepeatabilityConstant = 1.5m,
            ReproducibilityConstant = 3.0m,
            Source = "invented for this test",
            DraftedBy = _administrator.Id,
            DraftedAt = now,
            ApprovedBy = ServiceId,
            ApprovedAt = now,
        });
        await lab.SaveChangesAsync();
    }
}
