using LabVolatility.Laboratory.Samples;

namespace LabVolatility.Laboratory.Batches;

/// <summary>The step that a person saw and takes.</summary>
/// <param name="CommandId">The same id sent again takes nothing twice.</param>
/// <param name="Batch">Number of the batch.</param>
/// <param name="Occasion">What calls for it.</param>
/// <param name="Subject">The sample or quantity that it is about.</param>
/// <param name="Place">Its place in the branch.</param>
/// <param name="Reason">Why; what was found, unless the person says it otherwise.</param>
public sealed record TakeStepRequest(
    Guid CommandId, string Batch, RetestOccasion Occasion, string Subject, int Place, string? Reason)
{
    /// <summary>The step as the page showed it.</summary>
    public static TakeStepRequest Of(string batch, RetestAdvice advice) =>
        new(Guid.NewGuid(), batch, advice.Occasion, advice.Subject, advice.Place, advice.Found);
}
