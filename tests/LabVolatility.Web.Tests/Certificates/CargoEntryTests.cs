using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Certificates;
using LabVolatility.Laboratory.Certificates.Documents;
using LabVolatility.Web.Certificates;
using LabVolatility.Web.Tests.Batches;
using Xunit;

namespace LabVolatility.Web.Tests.Certificates;

/// <summary>A cargo certificate as typed.</summary>
public sealed class CargoEntryTests
{
    private static readonly DateTimeOffset At = new(2026, 5, 4, 8, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Request_BatchLookedAt_CarriesTheReleaseThatWasSeen()
    {
        var sheet = Sheets.Of(inForce: DecisionKind.Release);
        var entry = new CargoEntry { Ship = "MT Ternen" };
        entry.Tanks.Add(new CargoTankEntry { Tank = "T-101", Batch = "26-1042", Seen = new CargoBatch(sheet.Batch, sheet.Assessed.InForce, null, null) });

        var tank = Assert.Single(entry.Request().Tanks);

        Assert.Equal(new CargoTankRequest("T-101", "26-1042", sheet.Assessed.InForce!.Id), tank);
    }

    [Fact]
    public void Revising_Issued_BeginsWithAllThatItSays()
    {
        var content = new CargoContent
        {
            LaboratoryName = "Fjordvik laboratory",
            TimeZone = "Europe/Oslo",
            Number = "C2600042",
            Revision = 3,
            IssuedAt = At,
            CheckCode = "7H2K-9QXB-41TN",
            CheckAddress = "/certificates/check/7H2K-9QXB-41TN",
            Ship = "MT Ternen",
            Voyage = "26-17",
            Port = "Skarnes",
            Berth = "Jetty 2",
            Stage = LoadingStages.Text(LoadingStage.AfterLoading),
            Product = "Gasoline 95",
            Reference = "nomination 5512",
            Tanks = [],
            Signature = new SignatureLine("Tomas Lind", "shift chemist", "meaning", At),
        };

        var request = CargoEntry.Revising(new CargoSheet(content, [], [])).Request();

        Assert.Equal(("C2600042", 3, null), (request.Replaces, request.ReplacesRevision, request.ReplacesWhy));
        Assert.Equal(
            ("MT Ternen", "26-17", "Skarnes", "Jetty 2", LoadingStage.AfterLoading, "Gasoline 95", "nomination 5512"),
            (request.Ship, request.Voyage, request.Port, request.Berth, request.Stage, request.Product, request.Reference));
    }
}
