using LabVolatility.Laboratory.Batches;
using LabVolatility.Laboratory.People;

namespace LabVolatility.Laboratory.Demo;

/// <summary>Signatures of the demo's past: the passwords are those that the sign-in page lists.</summary>
internal sealed class DemoSignature : ISignature
{
    public Task<bool> IsRightAsync(Actor actor, string password, CancellationToken cancel) =>
        Task.FromResult(DemoPeople.All.Any(p => p.FullName == actor.Name && p.Password == password));
}
