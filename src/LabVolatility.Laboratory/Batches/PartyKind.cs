namespace LabVolatility.Laboratory.Batches;

/// <summary>Who else tested the product.</summary>
public enum PartyKind
{
    Inspector,
    Recipient,

    /// <summary>One that neither party runs, called in a dispute.</summary>
    ThirdLaboratory,
}
