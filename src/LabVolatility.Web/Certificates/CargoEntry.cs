using LabVolatility.Laboratory.Certificates;

namespace LabVolatility.Web.Certificates;

/// <summary>A cargo certificate as typed: every field keeps its text.</summary>
public sealed class CargoEntry
{
    /// <summary>The command's id: made once per form, so that a second click issues nothing twice.</summary>
    public Guid CommandId { get; } = Guid.NewGuid();

    public string? Replaces { get; set; }

    public int ReplacesRevision { get; set; }

    public string? ReplacesWhy { get; set; }

    public string? Ship { get; set; }

    public string? Voyage { get; set; }

    public string? Port { get; set; }

    public string? Berth { get; set; }

    public LoadingStage Stage { get; set; }

    public string? Product { get; set; }

    public string? WhyGradesDiffer { get; set; }

    public string? Reference { get; set; }

    public string? Remarks { get; set; }

    public List<CargoTankEntry> Tanks { get; } = [];

    /// <summary>True where the batches picked are of more than one grade.</summary>
    public bool GradesDiffer => Tanks.Select(t => t.Seen?.Batch.GradeCode).OfType<string>().Distinct().Count() > 1;

    /// <summary>The next revision of a certificate: all it says, to be changed.</summary>
    public static CargoEntry Revising(CargoSheet sheet)
    {
        var content = sheet.Content;
        var entry = new CargoEntry
        {
            Replaces = content.Number,
            ReplacesRevision = content.Revision,
            Ship = content.Ship,
            Voyage = content.Voyage,
            Port = content.Port,
            Berth = content.Berth,
            Stage = LoadingStages.All.First(s => LoadingStages.Text(s) == content.Stage),
            Product = content.Product,
            WhyGradesDiffer = content.WhyGradesDiffer,
            Reference = content.Reference,
            Remarks = content.Remarks,
        };
        entry.Tanks.AddRange(content.Tanks.Select(t => new CargoTankEntry { Tank = t.Tank, Batch = t.Batch }));
        return entry;
    }

    /// <summary>What was typed and seen, without a password.</summary>
    public CargoRequest Request() => new()
    {
        CommandId = CommandId,
        Replaces = Replaces,
        ReplacesRevision = ReplacesRevision,
        ReplacesWhy = ReplacesWhy,
        Ship = Ship,
        Voyage = Voyage,
        Port = Port,
        Berth = Berth,
        Stage = Stage,
        Product = Product,
        WhyGradesDiffer = WhyGradesDiffer,
        Reference = Reference,
        Remarks = Remarks,
        Tanks = [.. Tanks.Select(t => new CargoTankRequest(t.Tank, t.Batch, t.Seen?.InForce?.Id ?? Guid.Empty))],
    };
}
