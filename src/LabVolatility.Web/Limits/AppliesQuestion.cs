using LabVolatility.Core.Limits;
using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Web.Limits;

/// <summary>What applies to which product where and when, as typed and as the address carries it.</summary>
public sealed class AppliesQuestion
{
    public string? Grade { get; set; }

    public string? State { get; set; }

    public string? Area { get; set; }

    public string? Point { get; set; }

    public string? Date { get; set; }

    public string? Ethanol { get; set; }

    /// <summary>Whether the address asks anything.</summary>
    public bool Asked => !string.IsNullOrWhiteSpace(Area);

    /// <summary>The same question as parameters of an address.</summary>
    public IReadOnlyDictionary<string, object?> Parameters => new Dictionary<string, object?>
    {
        ["grade"] = Blank(Grade),
        ["state"] = Blank(State),
        ["area"] = Blank(Area),
        ["point"] = Blank(Point),
        ["date"] = Blank(Date),
        ["ethanol"] = Blank(Ethanol),
    };

    /// <summary>The question for the picker, or what can't be read of it.</summary>
    public ProductQuery? Read(IReadOnlyList<Grade> grades, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        if (!LimitWords.TryDay(Date, out var day))
            found.Add(new Problem("/date", "Give the day as 2026-11-25."));
        if (!ProductStates.TryParse(Blank(State) ?? ProductState.Finished.Text(), out var state))
            found.Add(new Problem("/state", $"\"{State}\" is no state of a product."));
        if (!PointsOfCompliance.TryParse(Blank(Point) ?? PointOfCompliance.Terminal.Text(), out var point))
            found.Add(new Problem("/point", $"\"{Point}\" is no point of compliance."));
        var ethanol = default(decimal?);
        if (Blank(Ethanol) is { } typed)
        {
            if (QuantityText.TryReadNumber(typed, 0m, 100m, out var percent, out var problem))
                ethanol = percent;
            else
                found.Add(new Problem("/ethanol", problem!));
        }

        problems = found;
        var grade = Blank(Grade) ?? SampleKind.Gasoline.Text();
        var kind = grades.FirstOrDefault(g => g.Code == grade)?.Kind ?? SampleKind.Gasoline;
        return found.Count > 0 ? null : new ProductQuery(grade, state, Area ?? "", point, day, ethanol, kind);
    }

    private static string? Blank(string? text) => string.IsNullOrWhiteSpace(text) ? null : text.Trim();
}
