using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;
using LabVolatility.Laboratory.Records;
using LabVolatility.Laboratory.Storage;
using Microsoft.EntityFrameworkCore;

namespace LabVolatility.Laboratory.Certificates;

/// <summary>What must hold before a cargo certificate is signed.</summary>
public static class CargoRules
{
    public const string Releases = GuardRules.CargoRestsOnReleases;
    public const string OneGrade = "unlike-grades-are-said";
    public const string AsSeen = "evidence-is-what-the-signer-saw";

    internal static IReadOnlyList<Problem> Fields(CargoRequest request)
    {
        var problems = new List<Problem>();
        Needed("/ship", request.Ship, "Name the ship.");
        Needed("/voyage", request.Voyage, "Give the voyage or the reference of the call.");
        Needed("/port", request.Port, "Name the port.");
        Needed("/product", request.Product, "Name the product as the cargo's papers do.");
        Fits("/berth", request.Berth, Lengths.Name);
        Fits("/reference", request.Reference, Lengths.Name);
        Fits("/remarks", request.Remarks, Lengths.Note);
        Fits("/whyGradesDiffer", request.WhyGradesDiffer, Lengths.Note);
        Fits("/replacesWhy", request.ReplacesWhy, Lengths.Note);
        if (request.Replaces is not null && string.IsNullOrWhiteSpace(request.ReplacesWhy))
            problems.Add(new Problem("/replacesWhy", $"Say why {request.Replaces} is replaced: it stands on the new revision."));
        if (request.Tanks.Count == 0)
            problems.Add(new Problem("", "Name a shore tank and the batch in it."));
        return problems;

        void Needed(string field, string? text, string message)
        {
            if (string.IsNullOrWhiteSpace(text))
                problems.Add(new Problem(field, message));
            else
                Fits(field, text, Lengths.Name);
        }

        void Fits(string field, string? text, int most)
        {
            if (text?.Trim().Length > most)
                problems.Add(new Problem(field, $"It has at most {most} characters."));
        }
    }

    internal static async Task<IReadOnlyList<Problem>> TanksAsync(
        LabContext context, CargoRequest request, IReadOnlyDictionary<string, CargoBatch> batches, Actor actor, CancellationToken cancel)
    {
        var known = await context.Tanks.Select(t => t.Code).ToListAsync(cancel);
        var problems = new List<Problem>();
        foreach (var (at, tank) in request.Tanks.Index())
        {
            if (!known.Contains(tank.Tank ?? ""))
                problems.Add(new Problem($"/tanks/{at}/tank", string.IsNullOrWhiteSpace(tank.Tank) ? "Pick the shore tank." : $"There is no tank \"{tank.Tank}\"."));
            else if (request.Tanks.Take(at).Any(t => t.Tank == tank.Tank))
                problems.Add(new Problem($"/tanks/{at}/tank", $"Tank {tank.Tank} stands above already: a tank has one vapour pressure."));
            if (OfBatch(tank, batches, actor) is { } problem)
                problems.Add(problem with { Field = $"/tanks/{at}/batch" });
        }

        var grades = request.Tanks.Select(t => batches.GetValueOrDefault(t.Batch ?? "")?.Line?.Grade).OfType<string>().Distinct().ToList();
        if (grades.Count > 1 && string.IsNullOrWhiteSpace(request.WhyGradesDiffer))
            problems.Add(new Problem("/whyGradesDiffer", $"The tanks hold unlike grades ({string.Join(", ", grades)}): say so in words for the paper, or issue a certificate for each grade.", OneGrade));
        return problems;
    }

    private static Problem? OfBatch(CargoTankRequest tank, IReadOnlyDictionary<string, CargoBatch> batches, Actor actor)
    {
        if (string.IsNullOrWhiteSpace(tank.Batch))
            return new Problem("", "Pick the batch in the tank.");
        if (!batches.TryGetValue(tank.Batch, out var batch))
            return new Problem("", $"There is no batch {tank.Batch}.");
        if (batch.Against is { } against)
            return new Problem("", against, Releases);
        if (batch.InForce!.Id != tank.Decision)
            return new Problem("", $"Batch {tank.Batch} was decided on anew since you looked: look at its value again, then sign.", AsSeen);
        return batch.Hands.Contains(actor.Id)
            ? new Problem("", $"You measured or amended a result of batch {tank.Batch}: somebody else signs this cargo's certificate.", SecondPersonSigns.Rule)
            : null;
    }
}
