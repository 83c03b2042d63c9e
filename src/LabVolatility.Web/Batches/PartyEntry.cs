using System.Globalization;
using LabVolatility.Core.Methods;
using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Web.Batches;

/// <summary>Another party's result as typed: every field keeps its text.</summary>
public sealed class PartyEntry
{
    /// <summary>Made once per form, so that a second click enters nothing twice.</summary>
    public Guid CommandId { get; } = Guid.NewGuid();

    public PartyKind Kind { get; set; }

    public string? Party { get; set; }

    public string? Laboratory { get; set; }

    public string? Reference { get; set; }

    public string? Sample { get; set; }

    public string? Seals { get; set; }

    public string Method { get; set; } = TestMethods.All[0].Designation;

    public string? Edition { get; set; }

    public string? Quantity { get; set; } = "DVPE";

    public string? Correlation { get; set; } = "";

    public string? Value { get; set; }

    public string? Count { get; set; } = "1";

    public string? MeasuredOn { get; set; }

    public bool Hazy { get; set; }

    /// <summary>What was typed as a request, and what could not be read.</summary>
    public PartyResultRequest Read(string batch, out IReadOnlyList<Problem> problems)
    {
        var found = new List<Problem>();
        if (!int.TryParse(Count?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var count))
            found.Add(new Problem("/count", "Give a whole number, 1 for a single result."));
        DateOnly? day = null;
        if (DateOnly.TryParseExact(MeasuredOn?.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var read))
            day = read;
        else if (!string.IsNullOrWhiteSpace(MeasuredOn))
            found.Add(new Problem("/measuredOn", $"\"{MeasuredOn.Trim()}\" is no day. Give it as 2026-11-25."));
        problems = found;
        return new PartyResultRequest
        {
            CommandId = CommandId,
            Batch = batch,
            Kind = Kind,
            Party = Party,
            Laboratory = Laboratory,
            Reference = Reference,
            Sample = string.IsNullOrEmpty(Sample) ? null : Sample,
            Seals = Seals,
            Method = Method,
            Edition = Edition,
            Quantity = Quantity,
            Correlation = Correlation,
            Value = Value,
            Count = count,
            MeasuredOn = day,
            Hazy = Hazy,
        };
    }
}
