using LabVolatility.Laboratory.Limits;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What can be wrong in a batch as entered.</summary>
internal static class BatchProblems
{
    public static async Task<List<Problem>> OfAsync(LabContext context, BatchRequest request, CancellationToken cancel)
    {
        var problems = new List<Problem>();
        if (request.Tank is not null && !await context.Tanks.AnyAsync(t => t.Code == request.Tank, cancel))
            problems.Add(new Problem("/tank", $"There is no tank \"{request.Tank}\"."));
        if (request.CubicMetres is <= 0 or > 1_000_000m)
            problems.Add(new Problem("/volume", "A volume is more than 0 and at most 1,000,000 m³."));
        if (request.EthanolPercent is < 0 or > 100)
            problems.Add(new Problem("/ethanolPercent", "Ethanol is 0 to 100 % (V/V)."));
        if (request.EthanolMethod is not null && request.EthanolPercent is null)
            problems.Add(new Problem("/ethanolPercent", "A method is named but no content."));
        if (request.From is null)
            problems.Add(new Problem("/from", "From which day will it be used?"));
        if (request.Until is null)
            problems.Add(new Problem("/until", "Until which day will it be used?"));
        if (request.Until < request.From)
            problems.Add(new Problem("/until", "The period of use ends before it begins."));
        if (request.From is { } from && request.Until > from.AddDays(400))
            problems.Add(new Problem("/until", "A period of use is at most 400 days."));
        var areas = await LimitCatalogue.LoadAsync(context, cancel);
        for (var i = 0; i < request.Destinations.Count; i++)
        {
            if (request.Destinations.Take(i).Contains(request.Destinations[i]))
                problems.Add(new Problem($"/destinations/{i}", $"{request.Destinations[i].Area} is named twice."));
            if (areas.All(a => a.Code != request.Destinations[i].Area))
                problems.Add(new Problem($"/destinations/{i}/area", $"There is no area \"{request.Destinations[i].Area}\"."));
        }

        return problems;
    }

    /// <summary>A number stands in addresses and on labels: no slash, no mark that an address takes for its own.</summary>
    public static Problem? OfNumber(string? number)
    {
        var text = number?.Trim() ?? "";
        return text.Length is 0 or > 40 || !text.Any(char.IsAsciiLetterOrDigit) || !text.All(IsFit)
            ? new Problem("/number", "A batch has a number of at most 40 characters: letters, digits, and - _ . ( ) or a space between them, as 26-1042.")
            : null;
    }

    private static bool IsFit(char character) => char.IsLetterOrDigit(character) || "-_.() ".Contains(character, StringComparison.Ordinal);
}
