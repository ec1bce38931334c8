// Not UniformTypeIdentifiers: see SwiftUI.swift beside this file, which declares what the app uses of it.

import SwiftUI

public typealias UTType = UTTypeStandIn
