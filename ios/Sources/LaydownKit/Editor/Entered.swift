import LaydownCore

/// What has been entered on an editor, by the fields' keys, and what stood there before each thing done to the drawing.
struct Entered {
    /// One thing done to the drawing, to be named again.
    struct Step: Equatable {
        fileprivate let number: Int
    }

    /// What stood under the keys that a step changed; nil where nothing was entered.
    private struct Before {
        let step: Step
        var texts: [String: String?] = [:]
    }

    private static let mostSteps = 50

    private var texts: [String: String] = [:]
    /// What is secret stands apart, so that it is never written down with the rest.
    private(set) var secrets: [String: String] = [:]
    private var steps: [Before] = []
    private var begun = 0

    var isEmpty: Bool { texts.isEmpty && secrets.isEmpty }
    var canUndo: Bool { steps.contains { !$0.texts.isEmpty } }
    var values: [Value] { texts.merging(secrets) { $1 }.map { Value(key: $0.key, text: $0.value) } }

    /// What is entered, by the fields' keys; steps of the drawing are not in it, nor what is secret.
    var all: [String: String] { texts }

    /// What is entered under a key.
    subscript(key: String) -> String? { texts[key] }

    /// Something was typed or chosen: what an Undo would put in its place is forgotten.
    mutating func type(_ text: String, key: String) {
        texts[key] = text
        steps.removeAll { $0.texts.keys.contains(key) }
    }

    /// A secret is typed.
    mutating func type(secret: String, key: String) {
        secrets[key] = secret
    }

    /// The secret typed under a key; empty where none was.
    func secret(_ key: String) -> String { secrets[key] ?? "" }

    /// Forgets what is secret.
    mutating func forgetSecrets() {
        secrets = [:]
    }

    /// Begins a thing that one Undo undoes.
    mutating func begin() -> Step {
        let newest = steps.last?.step
        // What came of the newest may still be on its way; older ones that changed nothing are nothing to undo.
        steps.removeAll { $0.texts.isEmpty && $0.step != newest }
        if steps.count == Entered.mostSteps { steps.removeFirst() }
        begun += 1
        let step = Step(number: begun)
        steps.append(Before(step: step))
        return step
    }

    /// Enters what came of a step, unless that has been undone.
    mutating func put(_ values: [Value], step: Step) {
        guard let at = steps.firstIndex(where: { $0.step == step }) else { return }
        for value in values {
            if !steps[at].texts.keys.contains(value.key) {
                steps[at].texts.updateValue(texts[value.key], forKey: value.key)
            }
            texts[value.key] = value.text
        }
    }

    /// Takes the last thing back.
    mutating func undo() {
        steps.removeAll { $0.texts.isEmpty }
        guard let last = steps.popLast() else { return }
        for (key, text) in last.texts { texts[key] = text }
    }
}
