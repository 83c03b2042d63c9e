namespace LabVolatility.Core.Methods;

/// <summary>What a finding does to a result.</summary>
public enum FindingSeverity
{
    /// <summary>The method corrects or remarks it; the result may be reported.</summary>
    Warning,

    /// <summary>The method rejects it; the result must not be reported.</summary>
    Blocking,
}
