using System.Text.Json;
using LabVolatility.Core.Quantities;

namespace LabVolatility.Web.Api;

/// <summary>A part of a request and its place. What has the wrong shape reads as null; the shape has said so already.</summary>
internal sealed class Given(Sent? sent, string pointer, Mistakes mistakes)
{
    public string Pointer { get; } = pointer;

    public bool IsThere => sent is { IsNull: false };

    public Given this[string name] => new(sent?.Find(name), Mistakes.Step(Pointer, name), mistakes);

    public IReadOnlyList<Given> Items =>
        [.. (sent?.Items ?? []).Select((item, index) => new Given(item, $"{Pointer}/{index}", mistakes))];

    public bool Has(string name) => sent?.Find(name) is not null;

    public bool IsObject => sent?.Kind is JsonValueKind.Object;

    /// <summary>The raw digits of a number.</summary>
    public string? Digits => sent?.Kind is JsonValueKind.Number ? sent.Text : null;

    public string? Text => sent?.Kind is JsonValueKind.String ? sent.Text : null;

    /// <summary>Text without blanks around it; null where nothing is left.</summary>
    public string? Words => string.IsNullOrWhiteSpace(Text) ? null : Text.Trim();

    public decimal? Number => Digits is { } digits && ExactNumber.TryRead(digits, out var number) ? number : null;

    public int? Whole => Number is { } number && number == decimal.Truncate(number) && Math.Abs(number) <= int.MaxValue ? (int)number : null;

    public bool? Flag => sent?.Kind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => null,
    };

    public DateOnly? Date => DateShape.TryRead(Text, out var date) ? date : null;

    public DateTimeOffset? Instant => InstantShape.TryRead(Text, out var instant) ? instant : null;

    public string? Unit => this["unit"].Text;

    public decimal? Amount => this["value"].Number;

    public AbsolutePressure? Pressure =>
        Amount is { } amount && PressureUnits.TryParse(Unit, out var unit) && AbsolutePressure.TryFrom(amount, unit, out var pressure) ? pressure : null;

    public Temperature? Temperature =>
        Amount is { } amount && TemperatureUnits.TryParse(Unit, out var unit) && Core.Quantities.Temperature.TryFrom(amount, unit, out var temperature) ? temperature : null;

    public Volume? Volume =>
        Amount is { } amount && VolumeUnits.TryParse(Unit, out var unit) && Core.Quantities.Volume.TryFrom(amount, unit, out var volume) ? volume : null;

    public void Refuse(string message) => mistakes.Add(Pointer, message);
}
