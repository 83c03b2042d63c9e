using LabVolatility.Core.Methods;
using LabVolatility.Core.Quantities;
using LabVolatility.Laboratory.Records;

namespace LabVolatility.Laboratory.Batches;

/// <summary>What can be wrong in another party's result as entered.</summary>
internal static class PartyResultProblems
{
    private const int MostResults = 99;

    public static List<Problem> Of(PartyResultRequest request, DateOnly today, IReadOnlyList<string> samples)
    {
        var problems = new List<Problem>();
        if (string.IsNullOrWhiteSpace(request.Party))
            problems.Add(new Problem("/party", "Whose result is it?"));
        if (string.IsNullOrWhiteSpace(request.Laboratory))
            problems.Add(new Problem("/laboratory", "Which laboratory tested it?"));
        if (request.Sample is not null && !samples.Contains(request.Sample))
            problems.Add(new Problem("/sample", $"\"{request.Sample}\" is no sample of this batch."));
        if (string.IsNullOrWhiteSpace(request.Quantity))
            problems.Add(new Problem("/quantity", "Which quantity is it, for example DVPE?"));
        if (!TestMethods.TryFind(request.Method ?? "", out _))
            problems.Add(new Problem("/method", $"\"{request.Method}\" is not a test method of this laboratory: its result can't be held beside ours."));
        if (!QuantityText.TryReadPressure(request.Value, PressureUnit.Kilopascal, out _, out var unread))
            problems.Add(new Problem("/value", unread!));
        if (request.Count is < 1 or > MostResults)
            problems.Add(new Problem("/count", $"A value is the mean of 1 to {MostResults} results."));
        if (request.MeasuredOn is null)
            problems.Add(new Problem("/measuredOn", "On which day was it measured?"));
        if (request.MeasuredOn > today)
            problems.Add(new Problem("/measuredOn", "It can't have been measured in the future."));
        return problems;
    }
}
