namespace LabVolatility.Laboratory.Bench;

/// <summary>Causes for which a result of vapour pressure is set aside; another one is said in words.</summary>
/// <remarks>Common practice. A value that is unwelcome, or far from the others, is no cause.</remarks>
public static class AssignableCauses
{
    public static IReadOnlyList<string> Known { get; } =
    [
        "container leaked or was not sealed",
        "container filled outside the method's range",
        "container opened before it was chilled",
        "sample not air-saturated as the method asks",
        "sample in two phases, or water in the container",
        "wrong sample or container measured",
        "syringe or transfer line leaked, air drawn in",
        "carry-over from the sample before, not rinsed",
        "injected volume or V/L off its setting",
        "measuring temperature off its setting",
        "pressure not at equilibrium when read",
        "instrument out of its band, shown by a check",
        "instrument fault or power cut during the run",
        "reading misread or mistyped, and not to be recovered",
        "verification or rinse run reported as a sample",
    ];
}
