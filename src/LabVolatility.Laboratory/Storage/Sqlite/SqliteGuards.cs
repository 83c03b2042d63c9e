namespace LabVolatility.Laboratory.Storage.Sqlite;

/// <summary>The rules that the SQLite file itself holds, whoever writes to it.</summary>
/// <remarks>
/// Whoever owns the file can drop a trigger: the start notices that, and the check of the records finds what was
/// changed meanwhile. A released migration calls what stood here then; changes come as new guards.
/// </remarks>
internal static class SqliteGuards
{
    private static readonly (string Table, string[] Keys)[] RecordTables =
    [
        ("audit_records", ["sequence"]),
        ("commands", ["id"]),
        ("tank_movements", ["id"]),
        ("container_openings", ["id"]),
        ("hand_blends", ["sample_id", "blendstock_container_id"]),
        ("blend_contents", ["id"]),
        ("verifications", ["id"]),
        ("determinations", ["id", "instrument_code, external_id"]),
        ("determination_revisions", ["id", "determination_id, revision"]),
        ("results", ["id"]),
        ("taken_ons", ["determination_id"]),
        ("assessments", ["id"]),
        ("decisions", ["id", "batch_id, sequence"]),
        ("review_marks", ["id"]),
        ("party_results", ["id"]),
        ("party_withdrawals", ["party_result_id"]),
        ("steps_taken", ["id", "batch_id, occasion, subject, place"]),
        ("handover_notes", ["id"]),
        ("handover_takings", ["note_id"]),
        ("certificates", ["id", "number, revision", "check_code", "decision_id"]),
        ("cargoes", ["certificate_id"]),
        ("cargo_tanks", ["id", "certificate_id, place", "certificate_id, tank_code"]),
    ];

    public static IReadOnlyList<Guard> All { get; } = [.. RecordTables.SelectMany(t => AppendOnly(t.Table, t.Keys)), .. Rules()];

    public static IEnumerable<string> Statements() => All.Select(g => g.Sql);

    private static IEnumerable<Guard> AppendOnly(string table, string[] keys)
    {
        foreach (var act in (string[])["update", "delete"])
        {
            yield return Trigger(table, $"{table}_no_{act}", $"BEFORE {act.ToUpperInvariant()} ON {table}", null,
                $"{GuardRules.AppendOnly}: rows of {table} are amended by new ones, never updated or deleted");
        }

        // INSERT OR REPLACE would delete without firing the guard above.
        var taken = string.Join(" OR ", keys.Select(key => string.Join(" AND ", key.Split(", ").Select(c => $"{c} = NEW.{c}"))));
        yield return Trigger(table, $"{table}_no_replace", $"BEFORE INSERT ON {table}", $"EXISTS (SELECT 1 FROM {table} WHERE {taken})",
            $"{GuardRules.SameKey}: {table} holds a row with this key");
    }

    private static IEnumerable<Guard> Rules()
    {
        yield return Trigger("decisions", "decisions_second_person_signs", "BEFORE INSERT ON decisions",
            """
            NEW.kind IN ('Release', 'Concession') AND EXISTS (
                SELECT 1 FROM determinations d JOIN samples s ON s.id = d.sample_id
                WHERE s.batch_id = NEW.batch_id AND (
                    d.measured_by = NEW.person_id
                    OR EXISTS (SELECT 1 FROM taken_ons t WHERE t.determination_id = d.id AND t.person_id = NEW.person_id)
                    OR EXISTS (SELECT 1 FROM determination_revisions r WHERE r.determination_id = d.id AND r."by" = NEW.person_id)))
            """,
            $"{GuardRules.SecondPersonSigns}: who measured or amended a result of the batch cannot sign its release");
        yield return Trigger("decisions", "decisions_evidence_is_frozen", "BEFORE INSERT ON decisions",
            """
            NEW.kind IN ('Release', 'Concession') AND NOT EXISTS (
                SELECT 1 FROM assessments a
                WHERE a.id = NEW.assessment_id AND a.batch_id = NEW.batch_id AND a.evidence_hash = NEW.evidence_hash)
            """,
            $"{GuardRules.EvidenceIsFrozen}: a release rests on a frozen assessment of the same batch with the same evidence");
        yield return Trigger("decisions", "decisions_no_concession_against_a_legal_limit", "BEFORE INSERT ON decisions",
            "NEW.kind = 'Concession' AND EXISTS (SELECT 1 FROM assessments a WHERE a.id = NEW.assessment_id AND a.fails_legal_limit)",
            $"{GuardRules.NoConcessionAgainstALegalLimit}: a legal limit is not shown to be met");
        yield return Trigger("decisions", "decisions_one_in_force", "BEFORE INSERT ON decisions",
            "NEW.sequence <> 1 + COALESCE((SELECT MAX(d.sequence) FROM decisions d WHERE d.batch_id = NEW.batch_id), 0)",
            $"{GuardRules.OneDecisionInForce}: another decision on the batch was made meanwhile");
        yield return Trigger("determinations", "determinations_ready_instrument_only", "BEFORE INSERT ON determinations",
            "EXISTS (SELECT 1 FROM instruments i WHERE i.code = NEW.instrument_code AND NOT i.in_service)",
            $"{GuardRules.ReadyInstrumentOnly}: the instrument is out of service");
        yield return Trigger("determinations", "determinations_one_test_a_container", "BEFORE INSERT ON determinations",
            "NEW.sole_test AND EXISTS (SELECT 1 FROM determinations d WHERE d.sole_test AND d.container_id = NEW.container_id)",
            $"{GuardRules.OneTestAContainer}: the container has served its one test");
        yield return Trigger("cargo_tanks", "cargo_tanks_second_person_signs", "BEFORE INSERT ON cargo_tanks",
            """
            EXISTS (
                SELECT 1 FROM certificates c JOIN samples s ON s.batch_id = NEW.batch_id JOIN determinations d ON d.sample_id = s.id
                WHERE c.id = NEW.certificate_id AND (
                    d.measured_by = c.issued_by
                    OR EXISTS (SELECT 1 FROM taken_ons t WHERE t.determination_id = d.id AND t.person_id = c.issued_by)
                    OR EXISTS (SELECT 1 FROM determination_revisions r WHERE r.determination_id = d.id AND r."by" = c.issued_by)))
            """,
            $"{GuardRules.SecondPersonSigns}: who measured or amended a result of a batch cannot sign its cargo certificate");
        yield return Trigger("cargo_tanks", "cargo_tanks_rest_on_releases", "BEFORE INSERT ON cargo_tanks",
            """
            NOT EXISTS (
                SELECT 1 FROM decisions d
                WHERE d.id = NEW.decision_id AND d.batch_id = NEW.batch_id AND d.kind IN ('Release', 'Concession')
                AND NOT EXISTS (SELECT 1 FROM decisions l WHERE l.batch_id = d.batch_id AND l.sequence > d.sequence))
            """,
            $"{GuardRules.CargoRestsOnReleases}: a cargo certificate covers batches whose release is in force");
        yield return Trigger("audit_records", "audit_records_unbroken_chain", "BEFORE INSERT ON audit_records",
            """
            NEW.sequence <> 1 + COALESCE((SELECT MAX(r.sequence) FROM audit_records r), 0)
            OR NEW.previous_hash <> COALESCE((SELECT r.hash FROM audit_records r ORDER BY r.sequence DESC LIMIT 1), hex(zeroblob(32)))
            """,
            $"{GuardRules.UnbrokenChain}: a record follows the last one and names its hash");
    }

    private static Guard Trigger(string table, string name, string when, string? condition, string message)
    {
        var test = condition is null ? "" : $"WHEN {condition}\n";
        return new Guard(table, name, $"CREATE TRIGGER {name} {when}\n{test}BEGIN\n    SELECT RAISE(ABORT, '{message}');\nEND");
    }
}
